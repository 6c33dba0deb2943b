/** The standard tapping machine. ISO 10140-5:2021, Annex E: five hammers of 0.5 kg and 30 mm across, 40 mm fall, ten blows a second. */
export const TAPPING_MACHINE = {
  hammerMass_kg: 0.5,
  hammerRadius_m: 0.015,
  blowVelocity_m_s: 0.886,
  blowRate_Hz: 10,
} as const;

/** Half the width of a third octave relative to its middle. */
const HALF_BAND = 0.115;

/**
 * Mean square force per hertz of the tapping machine on a surface, N²/Hz.
 *
 * Its lines, ten hertz apart, have F = 2 m_h v0 f_r |E/(1 − (ω/ω0)² + jωm_hY0)| with ω0² = κ_c/m_h; smoothed over
 * frequency that is F²/(2 f_r). δ = κ_cY0/2 < ω0: the hammer rebounds, E = 1 + exp(−π(δ + jω)/ω_d), ω_d = √(ω0² − δ²);
 * otherwise, and on a surface without contact spring, E = 1. A rigid floor without rebound gives 3.92 N²/Hz.
 *
 * The beat of blow and rebound, cos(πω/ω_d), is averaged over a third octave, where on a carpet it runs too fast to be
 * measured, but not around π, where blow and rebound cancel the contact's resonance exactly. The average of cos over ±h is
 * (sin h)/h; exp(−h²/6) agrees with it to h³ and, unlike it, leaves no beat where many fall into a band. Our own.
 *
 * Source: Brunskog & Hammer, "The interaction between the ISO tapping machine and lightweight floors", Acta Acustica
 * 89, 2003.
 * @param mobility_m_Ns Point mobility Y0 of the floor, real.
 * @param contactStiffness_N_m κ_c; Infinity for bare concrete.
 * @param contactLossFactor η_c of that spring at ω0, as a viscous damper: δ grows by η_c ω0/2.
 * @param reboundMobility_m_Ns Y0 at ω0, which tells whether the hammer comes back; absent: as at `f_Hz`.
 */
export function tappingForce2_N2_Hz(
  f_Hz: number,
  mobility_m_Ns: number,
  contactStiffness_N_m: number,
  contactLossFactor = 0,
  reboundMobility_m_Ns = mobility_m_Ns,
): number {
  const { hammerMass_kg: mass, blowVelocity_m_s, blowRate_Hz } = TAPPING_MACHINE;
  const omega = 2 * Math.PI * f_Hz;
  const omega0 = Math.sqrt(contactStiffness_N_m / mass);
  const damper = Number.isFinite(omega0) ? contactLossFactor : 0;
  const resistance = omega * mass * mobility_m_Ns + (damper * omega) / omega0;
  const real = 1 - (omega / omega0) ** 2;
  let rebound = 1;
  const delta = (contactStiffness_N_m * reboundMobility_m_Ns + damper * omega0) / 2;
  if (delta < omega0) {
    const damped = Math.sqrt(omega0 * omega0 - delta * delta);
    const decay = Math.exp((-Math.PI * delta) / damped);
    const phase = (Math.PI * omega) / damped;
    const half = HALF_BAND * phase * (1 - Math.exp(-((phase / Math.PI - 1) ** 2)));
    const smooth = Math.exp((-half * half) / 6);
    rebound = 1 + decay * (decay + 2 * Math.cos(phase) * smooth);
  }
  const rigid = 2 * mass * blowVelocity_m_s * blowRate_Hz;
  return ((rigid * rigid) / (2 * blowRate_Hz)) * (rebound / (real * real + resistance * resistance));
}
