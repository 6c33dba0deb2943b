/**
 * How far each mass of a freely floating chain moves at a natural frequency, the largest by 1; positive downward.
 *
 * The force in a spring is what moves everything above it: s_i (x_{i+1} − x_i) = −ω² Σ_{k≤i} m_k x_k, so that the shape
 * follows from the top down. @param stiffnesses One fewer than masses, > 0.
 */
export function modeShape(masses: readonly number[], stiffnesses: readonly number[], frequency_Hz: number): number[] {
  const omega2 = (2 * Math.PI * frequency_Hz) ** 2;
  const shape = [1];
  let momentum = 0;
  stiffnesses.forEach((stiffness, i) => {
    momentum += masses[i]! * shape[i]!;
    shape.push(shape[i]! - (omega2 * momentum) / stiffness);
  });
  const largest = Math.max(...shape.map(Math.abs));
  return shape.map((x) => x / largest);
}
