import { describe, expect, it } from 'vitest';
import { iic } from '#src/acoustics/ratings/iic.ts';
import { lnw } from '#src/acoustics/ratings/lnw.ts';
import { rw } from '#src/acoustics/ratings/rw.ts';
import { PUBLISHED_CASES, type PublishedCase } from '../../published/ratings-cases.ts';
import { asSpectrum } from './as-spectrum.ts';

const casesOf = (rating: string): PublishedCase[] => PUBLISHED_CASES.filter((c) => c.rating === rating);
const spectrumOf = (c: PublishedCase) => asSpectrum(c.input as Record<string, number>);

/** Labels of the published cases ('C50-3150') and of the code ('C50_3150'). */
const ADAPTATION = /^(C|Ctr)(\d.*)?$/;

describe('weighted sound reduction index', () => {
  it.each(casesOf('rw'))('$source: $id ($verified)', (c) => {
    const result = rw(spectrumOf(c), c.args.bands === 'octave' ? { bandWidth: 'octave' } : {});
    expect(result.Rw).toBe(c.expected.Rw);
    expect(result.fit.sum_dB).toBe(c.expected.sum);
    expect(result.fit.largest_dB).toBe(c.expected.max);
    const terms = result.adaptation as Record<string, { term_dB: number; XA_dB: number }>;
    const labels = Object.keys(c.expected).filter((key) => ADAPTATION.test(key));
    expect(labels.length).toBeGreaterThanOrEqual(2);
    for (const label of labels) {
      const { term_dB, XA_dB } = terms[label.replace('-', '_')]!;
      expect(term_dB, label).toBe(c.expected[label]);
      expect(Math.abs(XA_dB - c.expected.XA[label]), label).toBeLessThanOrEqual(0.001);
    }
    for (const [label, term] of Object.entries(terms)) {
      if (!labels.includes(label.replace('_', '-'))) expect(term.term_dB, label).toBeNaN();
    }
  });
});

describe('weighted impact sound level', () => {
  it.each(casesOf('lnw'))('$source: $id ($verified)', (c) => {
    const result = lnw(spectrumOf(c));
    expect(result.Lnw).toBe(c.expected.Lnw);
    expect(result.CI.term_dB).toBe(c.expected.CI);
    expect(result.fit.sum_dB).toBe(c.expected.sum);
    expect(result.fit.largest_dB).toBe(c.expected.max);
    expect(Math.abs(result.CI.sum_dB - c.expected.Lnsum.CI)).toBeLessThanOrEqual(0.001);
    expect(result.CI50_2500.term_dB).toBeNaN();
  });
});

describe('impact insulation class', () => {
  it.each(casesOf('iic'))('$source: $id ($verified)', (c) => {
    const result = iic(spectrumOf(c), { rounding: 'tenth' });
    expect(result.IIC).toBe(c.expected.IIC);
    expect(result.fit.sum_dB).toBe(c.expected.sum);
    expect(result.fit.largest_dB).toBe(c.expected.max);
    expect(result.fit.governs).toBe('single');
  });
});
