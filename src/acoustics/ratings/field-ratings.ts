import type { AstmRounding } from './astm-rounding.ts';
import { type Iic, iic } from './iic.ts';
import { type Lnw, lnw } from './lnw.ts';
import { type Rw, rw } from './rw.ts';
import type { Spectrum } from './spectrum.ts';
import { type Stc, stc } from './stc.ts';

export interface FieldRooms {
  /** Common area of the partition or floor, S, m². */
  readonly partitionArea_m2: number;
  /** Volume of the receiving room, V, m³. */
  readonly receivingVolume_m3: number;
  /** Reverberation time of the receiving room, T, s: one value, or one per band. */
  readonly reverberationTime_s: number | readonly number[];
}

export interface FieldBands {
  readonly bands_Hz: readonly number[];
  /** Apparent transmission loss R' (ATL), all paths together, dB. */
  readonly R_dB?: readonly number[];
  /** Apparent normalised impact level L'_n re 10 m², dB. */
  readonly Ln_dB?: readonly number[];
}

/** T0 for dwellings, s; A0, m²: ISO 16283-1:2014 clause 3 and ISO 16283-2:2020 clause 3; ASTM E336-23 clause 3. */
const REFERENCE_TIME_S = 0.5;
const REFERENCE_AREA_M2 = 10;
/** Sabine: A = 0.16 V/T in ISO 16283; 55.3/c = 0.161 at 20 °C in ASTM E336. */
export const SABINE_ISO_S_M = 0.16;
const SABINE_ASTM_S_M = 0.161;
/** Smallest volume of the receiving room for NNIC, of either room for ASTC, m³: ASTM E336-23, clause 5. */
const SMALLEST_VOLUME_M3 = 25;
/** Largest volume of the main method, m³; above it only NIC (Annex A1). */
const LARGEST_VOLUME_M3 = 150;

export interface FieldRatings {
  /** L1 − L2 in these rooms, dB, and its class NIC. */
  readonly noiseReduction: Spectrum;
  readonly NIC: Stc;
  /** Noise reduction normalised to 0.5 s, and its class NNIC. */
  readonly normalizedNoiseReduction: Spectrum;
  readonly NNIC: Stc;
  /** Class of the apparent transmission loss. */
  readonly ASTC: Stc;
  /** Weighted apparent sound reduction index R'_w. */
  readonly Rw: Rw;
  /** D_nT, and D_nT,w. */
  readonly DnT: Spectrum;
  readonly DnTw: Rw;
  /** D_n re 10 m², and D_n,w. */
  readonly Dn: Spectrum;
  readonly Dnw: Rw;
  /** L'_n,w and apparent impact insulation class AIIC of L'_n. */
  readonly Lnw: Lnw;
  readonly AIIC: Iic;
  /** L'_nT, L'_nT,w and normalised impact sound rating NISR of it. */
  readonly LnT: Spectrum;
  readonly LnTw: Lnw;
  readonly NISR: Iic;
  /** Impact levels in this room as it is, and impact sound rating ISR of them (ASTM E1007). */
  readonly impactLevel: Spectrum;
  readonly ISR: Iic;
  /** What ASTM E336-23 does not allow for these rooms, in words; empty: all of it applies. */
  readonly limits: readonly string[];
}

/**
 * Values as measured in buildings, from the apparent insulation and the rooms.
 *
 * Sources: ISO 16283-1:2014 (D_nT = R' + 10 lg 0.16 V/(T0 S)), ISO 16283-2:2020 (L'_nT = L'_n − 10 lg 0.16 V/(T0 A0)), ISO
 * 717-1 and -2 for the ratings; ASTM E336-23 (NR = ATL − 10 lg S/A2, A2 = 0.161 V/T) and E1007 with E413 and E989.
 * @throws RangeError for an area, volume or time that is not above 0, or times that do not match the bands.
 */
export function fieldRatings(bands: FieldBands, rooms: FieldRooms, rounding: AstmRounding = {}): FieldRatings {
  const { bands_Hz } = bands;
  const { partitionArea_m2: S, receivingVolume_m3: V } = rooms;
  requirePositive('partitionArea_m2', S);
  requirePositive('receivingVolume_m3', V);
  const T = timesPerBand(rooms.reverberationTime_s, bands_Hz);
  const gaps = bands_Hz.map(() => NaN);
  const R = bands.R_dB ?? gaps;
  const Ln = bands.Ln_dB ?? gaps;
  const spectrum = (values_dB: readonly number[]): Spectrum => ({ bands_Hz, values_dB });

  const noiseReduction = spectrum(R.map((r, i) => r + lg((SABINE_ASTM_S_M * V) / (T[i]! * S))));
  const normalizedNoiseReduction = spectrum(noiseReduction.values_dB.map((d, i) => d + lg(T[i]! / REFERENCE_TIME_S)));
  const DnT = spectrum(R.map((r) => r + lg((SABINE_ISO_S_M * V) / (REFERENCE_TIME_S * S))));
  const Dn = spectrum(R.map((r) => r + lg(REFERENCE_AREA_M2 / S)));
  const LnT = spectrum(Ln.map((l) => l - lg((SABINE_ISO_S_M * V) / (REFERENCE_TIME_S * REFERENCE_AREA_M2))));
  const impactLevel = spectrum(Ln.map((l, i) => l - lg((SABINE_ASTM_S_M * V) / (T[i]! * REFERENCE_AREA_M2))));
  return {
    noiseReduction,
    NIC: stc(noiseReduction, rounding),
    normalizedNoiseReduction,
    NNIC: stc(normalizedNoiseReduction, rounding),
    ASTC: stc(spectrum(R), rounding),
    Rw: rw(spectrum(R)),
    DnT,
    DnTw: rw(DnT),
    Dn,
    Dnw: rw(Dn),
    Lnw: lnw(spectrum(Ln)),
    AIIC: iic(spectrum(Ln), rounding),
    LnT,
    LnTw: lnw(LnT),
    NISR: iic(LnT, rounding),
    impactLevel,
    ISR: iic(impactLevel, rounding),
    limits: limitsOf(V),
  };
}

function lg(ratio: number): number {
  return 10 * Math.log10(ratio);
}

function requirePositive(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be > 0, got ${value}`);
}

function timesPerBand(time_s: number | readonly number[], bands_Hz: readonly number[]): readonly number[] {
  const times = typeof time_s === 'number' ? bands_Hz.map(() => time_s) : time_s;
  if (times.length !== bands_Hz.length) {
    throw new RangeError(`reverberationTime_s must have length ${bands_Hz.length} like bands_Hz, got ${times.length}`);
  }
  for (const t of times) requirePositive('reverberationTime_s', t);
  return times;
}

function limitsOf(volume_m3: number): string[] {
  if (volume_m3 < SMALLEST_VOLUME_M3) {
    return [`NNIC and ASTC need a receiving room of at least ${SMALLEST_VOLUME_M3} m³ (ASTM E336-23, clause 5)`];
  }
  if (volume_m3 >= LARGEST_VOLUME_M3) {
    return [`rooms of ${LARGEST_VOLUME_M3} m³ and more are rated by NIC only (ASTM E336-23, Annex A1)`];
  }
  return [];
}
