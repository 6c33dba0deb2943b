import type { Air } from './air.ts';

/** Newton steps at most, and the relative step that ends them: the one after would be about its square. */
const MOST_STEPS = 20;
const CLOSE = 1e-4;

/** Waves no nearer to the speed of sound are told apart. */
const SLOWEST = 1e-4;

/** ρ0ω²/k0⁵: what a face that moves with the leaf adds to `load` below, per 1/B of the leaf, N·m. */
export function loadPerFace_Nm(f_Hz: number, { density_kg_m3, soundSpeed_m_s }: Air): number {
  const omega = 2 * Math.PI * f_Hz;
  const speed2 = soundSpeed_m_s * soundSpeed_m_s;
  return (density_kg_m3 * soundSpeed_m_s * speed2 * speed2) / (omega * omega * omega);
}

/**
 * r = √(k²/k0² − 1) of the wave of a leaf that carries the air it moves on both sides: (1 + r²)² = μ⁴ + load/r, where μ is
 * k/k0 of its free wave in vacuo and load = 2ρ0ω²/(B k0⁵). Always one, slower than sound: a leaf held back by springs
 * (μ⁴ < 0) has none but for the air. Our own reading of a plate under fluid load.
 *
 * g(r) = r(1 + r²)² − μ⁴r − load is convex and below 0 at r = 0, so that Newton's steps come down to its one root from any r
 * above it. Such an r is r0 + δ, r0 the wave without load or 0, where 2δ³ = load, or 4r0²(1 + r0²) δ = load if that is less.
 * @returns To 1e-7; at least 1e-4.
 * @param fourth μ⁴, any sign.
 * @param load > 0.
 */
export function loadedWave(fourth: number, load: number): number {
  const free2 = fourth > 1 ? Math.sqrt(fourth) - 1 : 0;
  let r = Math.sqrt(free2) + Math.min(Math.cbrt(load / 2), load / (4 * free2 * (1 + free2)));
  for (let step = 0; step < MOST_STEPS; step++) {
    const mu2 = 1 + r * r;
    const down = (r * (mu2 * mu2 - fourth) - load) / (mu2 * (5 * mu2 - 4) - fourth);
    r -= down;
    if (down < CLOSE * r) break;
  }
  return Math.max(r, SLOWEST);
}
