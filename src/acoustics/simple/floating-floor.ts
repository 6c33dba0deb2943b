import { naturalFrequency_Hz } from '../natural-frequency.ts';

/**
 * 'plate': a cement screed, whose bending waves carry the blow away (30 dB per decade); 'local': asphalt and dry floors,
 * which give way where they are struck (40 dB per decade).
 */
export type FloatingFloorKind = 'plate' | 'local';

/**
 * Reduction of impact sound by a floating floor, dB: 0 up to f0, then 40 lg(f/f0) or 30 lg(f/f0).
 *
 * Source: Cremer, Acustica 2, 1952; Vér, JASA 50, 1971; slopes per kind from EN 12354-2:2000, Annex C.
 */
export function floatingImprovement_dB(frequency_Hz: number, resonance_Hz: number, kind: FloatingFloorKind): number {
  const slope_dB = kind === 'plate' ? 30 : 40;
  return Math.max(0, slope_dB * Math.log10(frequency_Hz / resonance_Hz));
}

/**
 * Reduction by a soft covering that only lengthens the blow, dB: 40 lg(f/f0) above f0 = √(κ/m)/2π, with the contact
 * stiffness κ and the 0.5 kg of one hammer.
 *
 * Source: Cremer & Heckl, Structure-Borne Sound; Vér, JASA 50, 1971.
 */
export function coveringImprovement_dB(frequency_Hz: number, contactStiffness_N_m: number): number {
  return floatingImprovement_dB(frequency_Hz, naturalFrequency_Hz(contactStiffness_N_m, HAMMER_MASS_KG), 'local');
}

/** ISO 10140-5, Annex E. */
const HAMMER_MASS_KG = 0.5;
