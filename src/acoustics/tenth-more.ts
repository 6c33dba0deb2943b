/** The change of a number that readers are told of, as a share of it. */
export const TENTH = 0.1;

/**
 * What a tenth more of a number does, dB per band: the slope at its present value carried on.
 *
 * @param slopes_dB d/d(ln x) as `Sensitivity` has them.
 */
export function tenthMore_dB(slopes_dB: readonly number[]): readonly number[] {
  return slopes_dB.map((slope) => slope * Math.log(1 + TENTH));
}
