import { type Air, ROOM_AIR } from '../air.ts';

export interface SewellInput {
  readonly surfaceMass_kg_m2: number;
  readonly area_m2: number;
  readonly frequency_Hz: number;
  /** Absent: limp. */
  readonly criticalFrequency_Hz?: number;
  readonly air?: Air;
}

/**
 * Forced transmission loss of a finite, roughly square panel in a diffuse field, dB:
 * R = 20 lg(ωm'/2ρ0c0) + 20 lg(1 − (f/fc)²) − 10 lg[ln(k√S) + 0.16].
 *
 * Source: Sewell, J. Sound Vib. 12, 1970, 21–32 (shape term of a square; from memory).
 * @returns NaN from the critical frequency up, and for panels so small against the wave that the formula turns round and
 * gives more the lower the frequency: ln(k√S) + 0.16 < 1/2, k√S < 1.4.
 */
export function sewellPanel_dB(input: SewellInput): number {
  const { surfaceMass_kg_m2, area_m2, frequency_Hz, criticalFrequency_Hz, air = ROOM_AIR } = input;
  const omega = 2 * Math.PI * frequency_Hz;
  const size = (omega / air.soundSpeed_m_s) * Math.sqrt(area_m2);
  const stiffness = criticalFrequency_Hz === undefined ? 1 : 1 - (frequency_Hz / criticalFrequency_Hz) ** 2;
  const edges = Math.log(size) + 0.16;
  if (!(edges >= 0.5 && stiffness > 0)) return NaN;
  const R0 = 20 * Math.log10((omega * surfaceMass_kg_m2) / (2 * air.density_kg_m3 * air.soundSpeed_m_s));
  return R0 + 20 * Math.log10(stiffness) - 10 * Math.log10(edges);
}
