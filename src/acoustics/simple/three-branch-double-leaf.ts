import { type Air, ROOM_AIR } from '../air.ts';
import { massLaw_dB } from './mass-law.ts';

export interface DoubleLeafInput {
  readonly bands_Hz: readonly number[];
  readonly upperMass_kg_m2: number;
  readonly lowerMass_kg_m2: number;
  /** Distance of the leaves, m, > 0. */
  readonly depth_m: number;
  /** Transmission loss of each leaf by itself, dB per band. Absent: field-incidence mass law. */
  readonly upper_dB?: readonly number[];
  readonly lower_dB?: readonly number[];
  readonly air?: Air;
}

export type DoubleLeafBranch = 'one mass' | 'two masses on air' | 'two leaves apart';

export interface DoubleLeafEstimate {
  readonly R_dB: readonly number[];
  readonly branches: readonly DoubleLeafBranch[];
  /** Mass-air-mass resonance, where the second branch begins, Hz. */
  readonly resonance_Hz: number;
  /** c/2πd, where the third branch begins, Hz. */
  readonly limit_Hz: number;
}

/** The air is taken as 1.8 times as stiff as for sound from straight ahead: field incidence (Sharp 1978). */
const FIELD_STIFFNESS = 1.8;

/**
 * Textbook estimate of a double leaf without bridges, with enough absorption in the cavity: below f0 the mass law of both
 * together; then R1 + R2 + 20 lg(fd) − 29; above c/2πd R1 + R2 + 6.
 *
 * Source: Sharp, Noise Control Eng. 11, 1978; as in Bies & Hansen, Engineering Noise Control, 4th ed., ch. 8 (from memory).
 * It shows what decoupling could give: no supports, no resonance dip, no coincidence unless in the leaves' own curves.
 */
export function threeBranchDoubleLeaf(input: DoubleLeafInput): DoubleLeafEstimate {
  const { bands_Hz, upperMass_kg_m2: m1, lowerMass_kg_m2: m2, depth_m, air = ROOM_AIR } = input;
  const airStiffness_N_m3 = (FIELD_STIFFNESS * air.density_kg_m3 * air.soundSpeed_m_s ** 2) / depth_m;
  const resonance_Hz = Math.sqrt(airStiffness_N_m3 * (1 / m1 + 1 / m2)) / (2 * Math.PI);
  const limit_Hz = air.soundSpeed_m_s / (2 * Math.PI * depth_m);
  const mass_dB = (surfaceMass_kg_m2: number, frequency_Hz: number) =>
    massLaw_dB({ surfaceMass_kg_m2, frequency_Hz, incidence: 'field', air });

  const branches = bands_Hz.map((f): DoubleLeafBranch => {
    if (f < resonance_Hz) return 'one mass';
    return f < limit_Hz ? 'two masses on air' : 'two leaves apart';
  });
  const R_dB = bands_Hz.map((f, i) => {
    if (branches[i] === 'one mass') return mass_dB(m1 + m2, f);
    const both_dB = (input.upper_dB?.[i] ?? mass_dB(m1, f)) + (input.lower_dB?.[i] ?? mass_dB(m2, f));
    return branches[i] === 'two leaves apart' ? both_dB + 6 : both_dB + 20 * Math.log10(f * depth_m) - 29;
  });
  return { R_dB, branches, resonance_Hz, limit_Hz };
}
