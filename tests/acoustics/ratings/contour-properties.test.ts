import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { iic } from '#src/acoustics/ratings/iic.ts';
import { lnw } from '#src/acoustics/ratings/lnw.ts';
import { oitc } from '#src/acoustics/ratings/oitc.ts';
import { rateBands } from '#src/acoustics/ratings/rate-bands.ts';
import { rw } from '#src/acoustics/ratings/rw.ts';
import type { Spectrum } from '#src/acoustics/ratings/spectrum.ts';
import { stc } from '#src/acoustics/ratings/stc.ts';
import { CONTOUR as E413 } from '#src/acoustics/standards/astm-e413.ts';
import { THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';

const BANDS_HZ = THIRD_OCTAVES_HZ.filter((f) => f >= 50 && f <= 5000);
const values = fc.array(
  fc.integer({ min: -100, max: 1200 }).map((tenths) => tenths / 10),
  { minLength: BANDS_HZ.length, maxLength: BANDS_HZ.length },
);
const spectrumOf = (values_dB: readonly number[]): Spectrum => ({ bands_Hz: BANDS_HZ, values_dB });

/** Each rating, and which way it goes when the bands go up. */
const RATINGS: readonly [name: string, rate: (s: Spectrum) => number, sense: 1 | -1][] = [
  ['STC', (s) => stc(s).STC, 1],
  ['STC from tenths', (s) => stc(s, { rounding: 'tenth' }).STC, 1],
  ['Rw', (s) => rw(s).Rw, 1],
  ['Rw + C', (s) => rw(s).Rw + rw(s).adaptation.C.term_dB, 1],
  ['Rw + Ctr,50-5000', (s) => rw(s).Rw + rw(s).adaptation.Ctr50_5000.term_dB, 1],
  ['OITC', (s) => oitc(s).OITC, 1],
  ['IIC', (s) => iic(s).IIC, -1],
  ['Ln,w', (s) => lnw(s).Lnw, 1],
  ['Ln,w + CI,50-2500', (s) => lnw(s).Lnw + lnw(s).CI50_2500.term_dB, 1],
];

describe.each(RATINGS)('%s', (_name, rate, sense) => {
  it('moves by as many whole decibels as every band does', () => {
    fc.assert(
      fc.property(values, fc.integer({ min: -40, max: 40 }), (v, shift) => {
        expect(rate(spectrumOf(v.map((x) => x + shift)))).toBe(rate(spectrumOf(v)) + sense * shift);
      }),
    );
  });

  it('never gets worse when a band gets better', () => {
    fc.assert(
      fc.property(values, fc.nat({ max: BANDS_HZ.length - 1 }), fc.integer({ min: 1, max: 300 }), (v, i, up) => {
        const raised = v.map((x, j) => (j === i ? x + up / 10 : x));
        expect(sense * rate(spectrumOf(raised))).toBeGreaterThanOrEqual(sense * rate(spectrumOf(v)));
      }),
    );
  });

  it('does not care in which order the bands come', () => {
    fc.assert(
      fc.property(values, fc.shuffledSubarray([...BANDS_HZ.keys()], { minLength: BANDS_HZ.length }), (v, order) => {
        const shuffled = { bands_Hz: order.map((i) => BANDS_HZ[i]!), values_dB: order.map((i) => v[i]!) };
        expect(rate(shuffled)).toBe(rate(spectrumOf(v)));
      }),
    );
  });

  it('is NaN when a band it needs is missing, NaN or infinite, whatever the others are', () => {
    for (const gap of [NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      const v = BANDS_HZ.map((f) => (f === 500 ? gap : 40));
      expect(rate(spectrumOf(v))).toBeNaN();
    }
    expect(rate({ bands_Hz: [], values_dB: [] })).toBeNaN();
  });
});

it('STC is the highest contour position that trying every one of them finds', () => {
  const wanted = E413.map(([f]) => f);
  fc.assert(
    fc.property(values, (v) => {
      const rounded = wanted.map((f) => Math.floor(v[BANDS_HZ.indexOf(f)]! + 0.5));
      let best = Number.NEGATIVE_INFINITY;
      for (let position = -150; position <= 200; position++) {
        const short = E413.map(([, c], i) => Math.max(0, position + c - rounded[i]!));
        if (Math.max(...short) <= 8 && short.reduce((a, b) => a + b) <= 32) best = Math.max(best, position);
      }
      expect(stc(spectrumOf(v)).STC).toBe(best);
    }),
  );
});

it('with a step of 0.1 dB, Rw lies less than one decibel above the whole one, and its terms carry one decimal', () => {
  fc.assert(
    fc.property(values, (v) => {
      const fine = rw(spectrumOf(v), { step_dB: 0.1 });
      expect(fine.Rw - rw(spectrumOf(v)).Rw).toBeGreaterThanOrEqual(0);
      expect(fine.Rw - rw(spectrumOf(v)).Rw).toBeLessThan(1);
      expect(fine.Rw + fine.adaptation.C.term_dB).toBeCloseTo(fine.adaptation.C.XA_dB, 0.9);
      expect(Math.abs(fine.adaptation.C.term_dB * 10 - Math.round(fine.adaptation.C.term_dB * 10))).toBeLessThan(1e-9);
    }),
  );
});

describe('rateBands', () => {
  it('gives what each rating gives, and NaN for the half that is not there', () => {
    const R_dB = BANDS_HZ.map((_, i) => 30 + i);
    const all = rateBands({ bands_Hz: BANDS_HZ, R_dB });
    expect(all).toMatchObject({
      STC: stc(spectrumOf(R_dB)).STC,
      Rw: rw(spectrumOf(R_dB)).Rw,
      IIC: NaN,
      Lnw: NaN,
      CI: NaN,
    });
    expect(all.C50_5000).toBe(rw(spectrumOf(R_dB)).adaptation.C50_5000.term_dB);
    expect(rateBands({ bands_Hz: BANDS_HZ, Ln_dB: R_dB })).toMatchObject({ STC: NaN, OITC: NaN, Rw: NaN, C: NaN });
  });

  it('leaves out only the terms whose range is missing', () => {
    const from100 = BANDS_HZ.filter((f) => f >= 100 && f <= 3150);
    const all = rateBands({ bands_Hz: from100, R_dB: from100.map(() => 45), Ln_dB: from100.map(() => 55) });
    expect(all.C).not.toBeNaN();
    expect(all.CI).not.toBeNaN();
    expect([all.STC, all.OITC, all.C50_3150, all.Ctr100_5000, all.CI50_2500]).toEqual([NaN, NaN, NaN, NaN, NaN]);
  });

  it('sees octave bands by themselves, which have an Rw but no STC', () => {
    const all = rateBands({ bands_Hz: [125, 250, 500, 1000, 2000], R_dB: [36, 45, 52, 55, 56] });
    expect(all).toMatchObject({ Rw: 54, STC: NaN, OITC: NaN });
  });

  it('survives numbers of any size', () => {
    for (const size of [1e-300, 1e15, 1e16, 1e17, 1e18, 1e20, 1e300, -1e17, -1e300]) {
      expect(() =>
        rateBands({ bands_Hz: BANDS_HZ, R_dB: BANDS_HZ.map(() => size), Ln_dB: BANDS_HZ.map(() => size) }),
      ).not.toThrow();
    }
  });

  it('refuses bands and values of different length', () => {
    expect(() => stc({ bands_Hz: [100, 125], values_dB: [1] })).toThrow(
      'values_dB must have length 2 like bands_Hz, got 1',
    );
  });
});
