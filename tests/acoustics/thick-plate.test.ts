import { describe, expect, it } from 'vitest';
import { softeningKink_Hz, thickPlateFactor } from '#src/acoustics/thick-plate.ts';

const CONCRETE = { thickness_m: 0.2, longitudinalSpeed_m_s: 3500 };
/** fc,eff/fc: fc goes as 1/√B. */
const rise = (f_Hz: number, { thickness_m, longitudinalSpeed_m_s } = CONCRETE) =>
  1 / Math.sqrt(thickPlateFactor(f_Hz, thickness_m, longitudinalSpeed_m_s));

describe('EN 12354-1:2000, Annex B: effective critical frequency of thick elements (from memory, unverified)', () => {
  it.each([
    // x = 4.05 f h/cL: 0.05786, 0.2314, 0.4629; x + √(1 + x²).
    [250, 1.05953],
    [1000, 1.25785],
    [2000, 1.56479],
    // fp = cL/5.5h = 3181.8 Hz; 2 (f/fp)³.
    [4000, 3.9736],
    [5000, 7.76093],
  ])('own case by hand: 200 mm of concrete, cL = 3500 m/s, at %d Hz: fc,eff = %f fc', (f_Hz, expected) => {
    expect(rise(f_Hz)).toBeCloseTo(expected, 4);
  });

  it('both branches meet at fp within the 1.1 % by which the formulas differ there', () => {
    const fp_Hz = 3500 / (5.5 * 0.2);
    expect(softeningKink_Hz(0.2, 3500) / fp_Hz).toBeCloseTo(1, 2);
    expect(rise(fp_Hz)).toBeCloseTo(2, 9);
    expect(rise(0.99 * fp_Hz) / rise(fp_Hz)).toBeGreaterThan(0.97);
  });

  it('goes by f h/cL alone, rises with it, and leaves low frequencies and thin elements alone', () => {
    expect(rise(800, { thickness_m: 0.1, longitudinalSpeed_m_s: 1400 })).toBeCloseTo(rise(1000), 12);
    const f_Hz = Array.from({ length: 60 }, (_, i) => 20 * 1.1 ** i);
    f_Hz.slice(1).forEach((f, i) => {
      expect(rise(f)).toBeGreaterThan(rise(f_Hz[i]!));
    });
    expect(rise(5000, { ...CONCRETE, thickness_m: 0.001 })).toBeLessThan(1.006);
  });
});
