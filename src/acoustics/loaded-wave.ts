/** How often the bisection halves the limits of r. */
const HALVINGS = 14;

/**
 * r of a free bending wave whose leaf carries the air it moves on both sides, (1 + r²)² = μ⁴ (1 + load/r) with
 * load = 2ρ0/(k0 m'). Always slower than without air; by bisection in ln r.
 */
export function loadedWave(free2: number, load: number): number {
  const free4 = free2 * free2;
  let low = 1e-3;
  let high = 2 * Math.sqrt(free2) + load + 1;
  for (let step = 0; step < HALVINGS; step++) {
    const r = Math.sqrt(low * high);
    const mu2 = 1 + r * r;
    if (mu2 * mu2 < free4 * (1 + load / r)) low = r;
    else high = r;
  }
  return Math.sqrt(low * high);
}
