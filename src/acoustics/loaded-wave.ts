/** Free waves faster than this, by k⁴/k0⁴, carry no air that matters and have no peak among the slow ones. */
export const LOADED = 1 / 16;

/** How often the bisection halves the limits of r. */
const HALVINGS = 14;

/**
 * r = √(k²/k0² − 1) of the wave of a leaf that carries the air it moves on both sides: (1 + r²)² = μ⁴ + load/r, where μ is
 * k/k0 of its free wave in vacuo and load = 2ρ0ω²/(B k0⁵). Always one, slower than sound: a leaf held back by springs
 * (μ⁴ < 0) has none but for the air. Our own reading of a plate under fluid load. By bisection in ln r, to 1e-3; not below 1e-4.
 * @param fourth μ⁴, any sign.
 * @param load > 0.
 */
export function loadedWave(fourth: number, load: number): number {
  let low = 1e-4;
  let high = Math.sqrt(Math.sqrt(Math.abs(fourth))) + Math.cbrt(load) + 1;
  for (let step = 0; step < HALVINGS; step++) {
    const r = Math.sqrt(low * high);
    const mu2 = 1 + r * r;
    if (mu2 * mu2 < fourth + load / r) low = r;
    else high = r;
  }
  return Math.sqrt(low * high);
}
