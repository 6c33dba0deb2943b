import { describe, expect, it } from 'vitest';
import { fieldRatings } from '#src/acoustics/ratings/field-ratings.ts';
import { THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';

const bands_Hz = THIRD_OCTAVES_HZ.filter((f) => f >= 50 && f <= 5000);
const R_dB = bands_Hz.map((_, i) => 35 + i);
const Ln_dB = bands_Hz.map((_, i) => 70 - i);
const room = { partitionArea_m2: 20, receivingVolume_m3: 50, reverberationTime_s: 0.5 };

describe('field values', () => {
  it('ISO 16283-1: D_nT = R′ + 10 lg(0.32 V/S), by hand −0.97 dB for 50 m³ behind 20 m²', () => {
    const { DnT } = fieldRatings({ bands_Hz, R_dB }, room);
    DnT.values_dB.forEach((d, i) => {
      expect(d - R_dB[i]!).toBeCloseTo(10 * Math.log10((0.32 * 50) / 20), 12);
    });
    expect(10 * Math.log10(0.8)).toBeCloseTo(-0.97, 2);
  });

  it('ISO 16283-2: L′_nT = L′_n − 10 lg(0.032 V), by hand −2.04 dB for 50 m³', () => {
    const { LnT } = fieldRatings({ bands_Hz, Ln_dB }, room);
    LnT.values_dB.forEach((l, i) => {
      expect(l - Ln_dB[i]!).toBeCloseTo(-2.041, 3);
    });
  });

  it('ASTM E336: at 0.5 s the noise reduction is already the normalised one; at 1 s it is 3 dB less', () => {
    const still = fieldRatings({ bands_Hz, R_dB }, room);
    expect(still.noiseReduction.values_dB).toEqual(still.normalizedNoiseReduction.values_dB);
    const live = fieldRatings({ bands_Hz, R_dB }, { ...room, reverberationTime_s: 1 });
    expect(live.noiseReduction.values_dB[0]! - still.noiseReduction.values_dB[0]!).toBeCloseTo(-3.0103, 4);
    expect(live.normalizedNoiseReduction.values_dB[0]).toBeCloseTo(still.normalizedNoiseReduction.values_dB[0]!, 12);
    expect(live.NNIC.STC).toBe(still.NNIC.STC);
    expect(live.NIC.STC).toBeLessThan(still.NIC.STC);
  });

  it('ASTM E336: where the absorption area equals the partition, NIC is ASTC', () => {
    const V = (20 * 0.5) / 0.161;
    const { NIC, ASTC } = fieldRatings({ bands_Hz, R_dB }, { ...room, receivingVolume_m3: V });
    expect(NIC.STC).toBe(ASTC.STC);
  });

  it('ISO and ASTM use Sabine constants that differ by 0.03 dB', () => {
    const { noiseReduction, DnT } = fieldRatings({ bands_Hz, R_dB }, room);
    expect(noiseReduction.values_dB[0]! - DnT.values_dB[0]!).toBeCloseTo(10 * Math.log10(0.161 / 0.16), 12);
  });

  it('takes one reverberation time per band', () => {
    const times = bands_Hz.map((f) => (f < 500 ? 1 : 0.5));
    const { impactLevel, LnT } = fieldRatings({ bands_Hz, Ln_dB }, { ...room, reverberationTime_s: times });
    expect(impactLevel.values_dB[0]! - LnT.values_dB[0]!).toBeCloseTo(3.0103 - 0.027, 2);
  });

  it('says what the room is too small or too large for', () => {
    expect(fieldRatings({ bands_Hz, R_dB }, room).limits).toEqual([]);
    expect(fieldRatings({ bands_Hz, R_dB }, { ...room, receivingVolume_m3: 20 }).limits[0]).toContain('at least 25 m³');
    expect(fieldRatings({ bands_Hz, R_dB }, { ...room, receivingVolume_m3: 200 }).limits[0]).toContain('NIC only');
  });

  it('rates only what it was given', () => {
    const airborne = fieldRatings({ bands_Hz, R_dB }, room);
    expect(airborne.DnTw.Rw).not.toBeNaN();
    expect(airborne.LnTw.Lnw).toBeNaN();
    expect(airborne.AIIC.IIC).toBeNaN();
  });

  it.each([
    [{ ...room, partitionArea_m2: 0 }, 'partitionArea_m2 must be > 0, got 0'],
    [{ ...room, receivingVolume_m3: NaN }, 'receivingVolume_m3 must be > 0, got NaN'],
    [{ ...room, reverberationTime_s: -1 }, 'reverberationTime_s must be > 0, got -1'],
    [{ ...room, reverberationTime_s: [0.5] }, 'reverberationTime_s must have length 21 like bands_Hz, got 1'],
  ])('refuses %j', (rooms, message) => {
    expect(() => fieldRatings({ bands_Hz, R_dB }, rooms)).toThrow(message);
  });
});
