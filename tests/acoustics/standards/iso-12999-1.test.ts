import { describe, expect, it } from 'vitest';
import { airborneUncertainty_dB, combinedUncertainty_dB, coverageFactor } from '#src/acoustics/ratings/uncertainty.ts';
import { COVERAGE_FACTORS, SINGLE_NUMBER_UNCERTAINTY_DB } from '#src/acoustics/standards/iso-12999-1.ts';
import { PUBLISHED_TABLES } from '../../published/ratings-tables.ts';

const { standard, clause, verified, values } = PUBLISHED_TABLES.iso12999_1_airborne;

describe(`${standard}, ${clause} (${verified})`, () => {
  it.each([
    ['A', 'A_reproducibility'],
    ['B', 'B_in_situ'],
    ['C', 'C_repeatability'],
  ] as const)('situation %s', (situation, key) => {
    const bands_Hz = Object.keys(values[key]).map(Number);
    expect(bands_Hz).toHaveLength(21);
    expect(airborneUncertainty_dB(bands_Hz, situation)).toEqual(Object.values(values[key]));
  });

  it('single numbers', () => {
    expect(SINGLE_NUMBER_UNCERTAINTY_DB).toEqual({ Rw: values.single_Rw, Lnw: values.single_Lnw });
  });

  it('has no value outside 50–5000 Hz', () => {
    expect(airborneUncertainty_dB([40, 100, 6300], 'A')).toEqual([NaN, 3, NaN]);
  });
});

describe('coverage', () => {
  it('ISO 12999-1 clause 8: 1.96 for 95 % two-sided, 1.65 one-sided', () => {
    expect(coverageFactor(0.95, 'twoSided')).toBe(1.96);
    expect(coverageFactor(0.95, 'oneSided')).toBe(1.65);
    expect(coverageFactor(0.5, 'twoSided')).toBe(1);
  });

  it('the factors are those of a normal distribution, to the digits printed', () => {
    for (const { factor, twoSided, oneSided } of COVERAGE_FACTORS) {
      // Trapezoidal rule for the area under the bell curve from −k to k.
      const n = 20_000;
      let area = 0;
      for (let i = 0; i <= n; i++) {
        const x = -factor + (2 * factor * i) / n;
        area += (i === 0 || i === n ? 0.5 : 1) * Math.exp((-x * x) / 2);
      }
      const covered = (area * 2 * factor) / n / Math.sqrt(2 * Math.PI);
      expect(Math.abs(covered - twoSided)).toBeLessThan(0.005);
      expect(Math.abs((1 + covered) / 2 - oneSided)).toBeLessThan(0.005);
    }
  });

  it('refuses what no factor covers', () => {
    expect(() => coverageFactor(0.9999, 'twoSided')).toThrow('confidence must be > 0 and at most 0.999, got 0.9999');
    expect(() => coverageFactor(0, 'oneSided')).toThrow('confidence must be > 0');
  });

  it('independent uncertainties add by their squares', () => {
    expect(combinedUncertainty_dB(3, 4)).toBe(5);
    expect(combinedUncertainty_dB()).toBe(0);
  });
});
