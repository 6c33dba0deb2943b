import type { Air } from './air.ts';
import type { Leak } from './construction.ts';

/**
 * Transmission coefficient of a slit or a round hole in a diffuse field, per its own opening area.
 *
 * Slit: Gomperts & Kihlman, "The sound transmission loss of circular and slit-shaped apertures in walls", Acustica 18,
 * 1967 (formula from memory): K = kw, X = depth/w, e = (ln(8/K) − 0.57722)/π,
 * τ = m K cos²(Ke) / {2n² [sin²(K(X+2e)) + K²/(2n²) (1 + cos(K(X+2e)) cos(KX))]}, m = 8 in a diffuse field, n = 1 away
 * from edges. Hole: own derivation for a tube with flanged ends, each with resistance (ka)²/2 and end correction 0.85 a.
 * Neither counts viscosity, so the resonances of narrow gaps come out too sharp; τ is held at 10. Valid for openings
 * narrower than a sixth of a wavelength; wider ones pass what falls on them.
 */
export function leakTransmission(leak: Leak, f_Hz: number, air: Air): number {
  const k = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
  return leak.length_m === undefined
    ? holeTransmission(k, leak.width_m / 2, leak.depth_m)
    : slitTransmission(k, leak.width_m, leak.depth_m);
}

/** Opening area of a leak, m². */
export function leakArea_m2(leak: Leak): number {
  return leak.length_m === undefined ? (Math.PI * leak.width_m ** 2) / 4 : leak.width_m * leak.length_m;
}

const MAXIMUM = 10;
const DIFFUSE_FIELD = 8;
const EULER = 0.57722;

function slitTransmission(k: number, width_m: number, depth_m: number): number {
  const kw = Math.min(k * width_m, 1);
  const x = depth_m / width_m;
  const e = (Math.log(8 / kw) - EULER) / Math.PI;
  const sin = Math.sin(kw * (x + 2 * e));
  const resistance = ((kw * kw) / 2) * (1 + Math.cos(kw * (x + 2 * e)) * Math.cos(kw * x));
  return Math.min((DIFFUSE_FIELD * kw * Math.cos(kw * e) ** 2) / (2 * (sin * sin + resistance)), MAXIMUM);
}

function holeTransmission(k: number, radius_m: number, depth_m: number): number {
  const ka2 = Math.min(k * radius_m, 1) ** 2;
  const length = k * (depth_m + 2 * 0.85 * radius_m);
  return Math.min((4 * ka2) / (Math.sin(length) ** 2 + (ka2 * Math.cos(length)) ** 2), MAXIMUM);
}
