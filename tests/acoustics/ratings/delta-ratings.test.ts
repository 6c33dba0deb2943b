import { describe, expect, it } from 'vitest';
import { deltaIic } from '#src/acoustics/ratings/delta-iic.ts';
import { deltaLtw, deltaLw, equivalentLnw } from '#src/acoustics/ratings/delta-lw.ts';
import { lnw } from '#src/acoustics/ratings/lnw.ts';
import type { Spectrum } from '#src/acoustics/ratings/spectrum.ts';
import { HEAVY_FLOOR, LIGHT_FLOORS } from '#src/acoustics/standards/iso-717-2-reference-floors.ts';
import { bandsOf, valuesOf } from '#src/acoustics/standards/table.ts';
import { PUBLISHED_CASES } from '../../published/ratings-cases.ts';
import { asSpectrum } from './as-spectrum.ts';

const BANDS_HZ = bandsOf(HEAVY_FLOOR);
const flat = (value: number): Spectrum => ({ bands_Hz: BANDS_HZ, values_dB: BANDS_HZ.map(() => value) });

describe('improvement by a covering', () => {
  it.each(PUBLISHED_CASES.filter((c) => c.rating === 'delta_lw'))('$source: $id ($verified)', (c) => {
    const result = deltaLw(asSpectrum(c.input as Record<string, number>));
    expect(result.dLw).toBe(c.expected.dLw);
    expect(result.covered.Lnw).toBe(c.expected.Lnrw);
    expect(result.covered.CI.term_dB).toBe(c.expected.CIr);
    expect(result.covered.fit.sum_dB).toBe(c.expected.sum);
    expect(result.CIdelta).toBe(c.expected.CIdelta);
    expect(result.dLlin).toBe(c.expected.dLlin);
  });

  it('is 0 for no covering and as large as one that takes the same off every band', () => {
    expect(deltaLw(flat(0))).toMatchObject({ dLw: 0, CIdelta: 0, dLlin: 0 });
    expect(deltaLw(flat(12))).toMatchObject({ dLw: 12, CIdelta: 0, dLlin: 12 });
    expect(deltaIic(flat(0)).dIIC).toBe(0);
    expect(deltaIic(flat(12)).dIIC).toBe(12);
    expect(([1, 2, 3] as const).map((type) => deltaLtw(flat(7), type).dLtw)).toEqual([7, 7, 7]);
  });

  it('is NaN where a band is missing', () => {
    const gap = { bands_Hz: BANDS_HZ.slice(1), values_dB: BANDS_HZ.slice(1).map(() => 5) };
    expect(deltaLw(gap).dLw).toBeNaN();
    expect(deltaIic(gap).dIIC).toBeNaN();
    expect(deltaLtw(gap, 1).dLtw).toBeNaN();
  });

  it('the reference covering on the heavy floor gives ΔIIC by the 8 dB rule, worked by hand', () => {
    // Floor less covering: 67 67.5 68 66.5 63 59.5 56 52.5 49 45.5 42 42 42 42 42 42. Contour at 58: 60 below 315 Hz;
    // 160 Hz is 8.0 over it, which is the most a single band may be; the sum is 7 + 7.5 + 8 + 6.5 + 3 + 2 = 34 > 32.
    // Contour at 59: 6 + 6.5 + 7 + 5.5 + 2 + 1 (3150 Hz) = 28. IIC 110 − 59 = 51, ΔIIC 51 − 28 = 23.
    const covering = asSpectrum(
      PUBLISHED_CASES.find((c) => c.id === 'iso717-2-ref-covering')!.input as Record<string, number>,
    );
    const { dIIC, covered } = deltaIic(covering);
    expect(covered.fit.deficiencies_dB).toEqual([6, 6.5, 7, 5.5, 2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1]);
    expect(dIIC).toBe(23);
  });
});

describe('reference floors rate as printed', () => {
  it.each([1, 2, 3] as const)('ISO 717-2 table 5: lightweight floor type %d', (type) => {
    const bands = LIGHT_FLOORS[type];
    expect(lnw({ bands_Hz: bandsOf(bands), values_dB: valuesOf(bands) }).Lnw).toBe(type === 3 ? 75 : 72);
  });

  it('ISO 717-2 Annex B: the equivalent level of the heavy reference floor is its own, 78 dB', () => {
    expect(equivalentLnw({ bands_Hz: BANDS_HZ, values_dB: valuesOf(HEAVY_FLOOR) }).Lneq0w).toBe(78);
  });
});
