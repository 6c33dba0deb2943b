import type { Air } from './air.ts';

/** Complex wave number and characteristic impedance of a medium, time factor e^{+jωt}. */
export interface FluidMedium {
  kRe: number;
  kIm: number;
  zcRe: number;
  zcIm: number;
}

/**
 * Fibre fill as an equivalent fluid, from its flow resistivity alone.
 *
 * Source: Y. Miki, "Acoustical properties of porous materials", J. Acoust. Soc. Jpn (E) 11(1), 1990, eqs. (28)–(31).
 * Valid 0.01 < f/r_f < 1; below, the model stays passive and is extrapolated. Writes into `out`.
 */
export function fibreMedium(f_Hz: number, flowResistivity_Pa_s_m2: number, air: Air, out: FluidMedium): FluidMedium {
  const x = f_Hz / flowResistivity_Pa_s_m2;
  const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
  const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
  const kPower = x ** -0.618;
  const zPower = x ** -0.632;
  out.kRe = k0 * (1 + 0.109 * kPower);
  out.kIm = -k0 * 0.16 * kPower;
  out.zcRe = z0 * (1 + 0.07 * zPower);
  out.zcIm = -z0 * 0.107 * zPower;
  return out;
}

/** Air with a loss factor on its bulk modulus: k = k0 (1 − jη/2), Zc = ρ0 c0 (1 + jη/2). Writes into `out`. */
export function lossyAir(f_Hz: number, lossFactor: number, air: Air, out: FluidMedium): FluidMedium {
  const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
  const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
  out.kRe = k0;
  out.kIm = (-k0 * lossFactor) / 2;
  out.zcRe = z0;
  out.zcIm = (z0 * lossFactor) / 2;
  return out;
}
