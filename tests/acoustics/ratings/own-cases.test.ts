/** STC and OITC have no published worked example: these are our own, worked by hand, the steps beside them. */
import { describe, expect, it } from 'vitest';
import { iic } from '#src/acoustics/ratings/iic.ts';
import { lnw } from '#src/acoustics/ratings/lnw.ts';
import { oitc } from '#src/acoustics/ratings/oitc.ts';
import { rw } from '#src/acoustics/ratings/rw.ts';
import type { Spectrum } from '#src/acoustics/ratings/spectrum.ts';
import { stc } from '#src/acoustics/ratings/stc.ts';
import { CONTOUR as E413 } from '#src/acoustics/standards/astm-e413.ts';
import { CONTOUR as E989 } from '#src/acoustics/standards/astm-e989.ts';
import { REFERENCE_THIRD as ISO_717_1 } from '#src/acoustics/standards/iso-717-1.ts';
import { type BandTable, bandsOf } from '#src/acoustics/standards/table.ts';

/** The contour with this value at 500 Hz, changed by so much in single bands. */
function shaped(contour: BandTable, at500_dB: number, changes: Record<number, number> = {}): Spectrum {
  const base = contour.find(([f]) => f === 500)![1];
  return {
    bands_Hz: bandsOf(contour),
    values_dB: contour.map(([f, v]) => v - base + at500_dB + (changes[f] ?? 0)),
  };
}

describe('STC, own cases worked by hand', () => {
  it('a curve along the contour gains 2 dB: sixteen deficiencies of 2 are the 32 that E413 allows', () => {
    const { STC, fit } = stc(shaped(E413, 50));
    expect(STC).toBe(52);
    expect(fit.sum_dB).toBe(32);
    expect(fit.deficiencies_dB).toEqual(new Array(16).fill(2));
    expect(fit.governs).toBe('sum');
  });

  it('one tenth less in one band makes the sum 32.1 and costs a point', () => {
    const { STC, fit } = stc(shaped(E413, 50, { 1000: -0.1 }), { rounding: 'tenth' });
    expect(STC).toBe(51);
    expect(fit.sum_dB).toBe(16.1);
  });

  it('the 8 dB rule governs: a dip of 10 dB at 160 Hz holds the contour 2 dB below the rest of the curve', () => {
    const { STC, fit } = stc(shaped(E413, 50, { 160: -10 }));
    expect(STC).toBe(48);
    expect(fit).toMatchObject({ sum_dB: 8, largest_dB: 8, largestBand_Hz: 160, governs: 'single' });
  });

  it('the same dip is no obstacle to ISO 717-1: 15 k + 10 + k = 32 at k = 1.375', () => {
    expect(rw(shaped(ISO_717_1, 50, { 160: -10 })).Rw).toBe(51);
  });

  it('a dip of 6 dB sits at both limits at once: 8 + 15 × 2 = 38 is over, 7 + 15 = 22 is not, 8 is', () => {
    const { STC, fit } = stc(shaped(E413, 50, { 160: -6 }));
    expect(STC).toBe(51);
    expect(fit).toMatchObject({ sum_dB: 22, largest_dB: 7, governs: 'sum' });
  });

  it('half decibels flip the rating: up to whole ones 53, kept 52 (16 × 1.5 = 24, 16 × 2.5 = 40), to even 52', () => {
    const halves = shaped(E413, 50.5);
    expect(stc(halves).STC).toBe(53);
    expect(stc(halves, { rounding: 'tenth' }).STC).toBe(52);
    const toEven = stc(halves, { tie: 'half-even' });
    expect(toEven.STC).toBe(52);
    expect(toEven.fit.values_dB).toEqual([34, 38, 40, 44, 46, 50, 50, 52, 52, 54, 54, 54, 54, 54, 54, 54]);
    expect(toEven.fit.sum_dB).toBe(27);
  });

  it('a wall by hand: 25 29 33 38 41 44 47 49 51 52 53 52 48 45 49 53 is STC 47', () => {
    // Contour 48: 32 35 38 41 44 47 48 49 50 51 52 52 52 52 52 52; short by 7 6 5 3 3 3 1 0 0 0 0 0 4 7 3 0 = 42 > 32.
    // Contour 47: 31 34 37 40 43 46 47 48 49 50 51 51 51 51 51 51; short by 6 5 4 2 2 2 0 0 0 0 0 0 3 6 2 0 = 32.
    const values_dB = [25, 29, 33, 38, 41, 44, 47, 49, 51, 52, 53, 52, 48, 45, 49, 53];
    const { STC, fit } = stc({ bands_Hz: bandsOf(E413), values_dB });
    expect(STC).toBe(47);
    expect(fit.deficiencies_dB).toEqual([6, 5, 4, 2, 2, 2, 0, 0, 0, 0, 0, 0, 3, 6, 2, 0]);
    expect(fit.sum_dB).toBe(32);
  });
});

describe('IIC and Ln,w, own cases worked by hand', () => {
  it('a curve along the contour at 60 dB is IIC 52: the contour falls by 2 dB', () => {
    const { IIC, fit } = iic(shaped(E989, 60));
    expect(IIC).toBe(52);
    expect(fit).toMatchObject({ sum_dB: 32, at500_dB: 58, governs: 'sum' });
  });

  it('the 8 dB rule holds for IIC, not for Ln,w: one band 10 dB up', () => {
    const peak = shaped(E989, 60, { 125: 10 });
    expect(iic(peak).IIC).toBe(48);
    expect(iic(peak).fit).toMatchObject({ largest_dB: 8, largestBand_Hz: 125, governs: 'single' });
    expect(lnw(peak).Lnw).toBe(59);
  });

  it('IIC and Ln,w add up to 110 where no single band counts and the bands are whole', () => {
    const floor = shaped(E989, 57, { 100: 3, 125: 2, 3150: -9 });
    expect(iic(floor).IIC + lnw(floor).Lnw).toBe(110);
  });
});

describe('OITC, own cases worked by hand', () => {
  const flat = (value: number): Spectrum => ({
    bands_Hz: [80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000],
    values_dB: new Array(18).fill(value),
  });

  it('a flat transmission loss is its own rating: 100.13 − (100.128 − 30) = 30.002', () => {
    expect(oitc(flat(30)).OITC).toBe(30);
    expect(oitc(flat(30)).unrounded_dB).toBeCloseTo(30.002, 3);
  });

  it('band values enter unrounded and the result goes half up: 30.499 stays 31 by 30.501', () => {
    expect(oitc(flat(30.499)).OITC).toBe(31);
    expect(oitc(flat(30.497)).OITC).toBe(30);
  });

  it('one open band rules: 80 Hz without loss lets 80.5 dB(A) in, 100.13 − 80.5 = 19.63', () => {
    const spectrum = flat(100);
    const open = { ...spectrum, values_dB: [0, ...spectrum.values_dB.slice(1)] };
    expect(oitc(open).OITC).toBe(20);
    expect(oitc(open).unrounded_dB).toBeCloseTo(19.63, 2);
    expect(oitc(open).transmitted_dB[0]).toBe(80.5);
  });
});
