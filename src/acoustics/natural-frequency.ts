/** Undamped resonance of a mass on a spring, √(s/m)/2π, Hz: both per area, or N/m and kg. */
export function naturalFrequency_Hz(stiffness: number, mass: number): number {
  return Math.sqrt(stiffness / mass) / (2 * Math.PI);
}
