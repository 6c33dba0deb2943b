import { type Air, ROOM_AIR } from '../air.ts';

/** Sound from straight ahead, from all angles up to 78°, or from all angles up to grazing. */
export type Incidence = 'normal' | 'field' | 'diffuse';

export interface MassLawInput {
  readonly surfaceMass_kg_m2: number;
  readonly frequency_Hz: number;
  readonly incidence: Incidence;
  readonly air?: Air;
}

/** Greatest angle of "field" incidence: common practice (Beranek, Noise and Vibration Control, 1971, ch. 11). */
const FIELD_LIMIT_RAD = (78 * Math.PI) / 180;

/**
 * Transmission loss of a limp infinite leaf, dB.
 *
 * Source: τ(θ) = 1/(1 + a² cos²θ), a = ωm'/2ρ0c0 (Fahy & Gardonio, Sound and Structural Vibration, 2007, ch. 5), averaged
 * with 2 sinθ cosθ in closed form. For heavy leaves the textbook rules follow: normal R0 = 20 lg a, field R0 − 5,
 * diffuse R0 − 10 lg(0.23 R0).
 * Valid well below the critical frequency. No mass gives 0 dB.
 */
export function massLaw_dB({ surfaceMass_kg_m2, frequency_Hz, incidence, air = ROOM_AIR }: MassLawInput): number {
  const a2 = ((Math.PI * frequency_Hz * surfaceMass_kg_m2) / (air.density_kg_m3 * air.soundSpeed_m_s)) ** 2;
  // log1p keeps the digits of leaves that hardly weigh anything.
  if (incidence === 'normal') return (10 / Math.LN10) * Math.log1p(a2);
  if (a2 === 0) return 0;
  const limit_rad = incidence === 'field' ? FIELD_LIMIT_RAD : Math.PI / 2;
  const sin2 = Math.sin(limit_rad) ** 2;
  const grazing = incidence === 'field' ? a2 * (1 - sin2) : 0;
  const tau = (Math.log1p(a2) - Math.log1p(grazing)) / (a2 * sin2);
  return -10 * Math.log10(tau);
}
