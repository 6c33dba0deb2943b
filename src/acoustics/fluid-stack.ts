import { FLUID_NUMBERS, fluidLayer } from './fluid-layer.ts';

/** A = D, B, C of the fluid layer at hand, and of none. */
const fluid = new Float64Array(6);
const NOTHING = [1, 0, 0, 0, 0, 0];

/**
 * Writes A, B, C, D of the fluid layers of one cavity, multiplied from the lowest up, real and imaginary parts in turn, into
 * `out` from index `at` on.
 *
 * @param layers What `prepareFluidLayer` wrote; the cavity's from number `first` to before `end`.
 * @param along Wave number² along the layers, kx², rad²/m², in place 0.
 */
export function fluidStack(
  layers: Float64Array,
  first: number,
  end: number,
  along: Float64Array,
  out: Float64Array,
  at: number,
): void {
  let j = first;
  if (j === end) fluid.set(NOTHING);
  else fluidLayer(layers, j * FLUID_NUMBERS, along, fluid);
  let aRe = fluid[0]!;
  let aIm = fluid[1]!;
  let bRe = fluid[2]!;
  let bIm = fluid[3]!;
  let cRe = fluid[4]!;
  let cIm = fluid[5]!;
  let dRe = aRe;
  let dIm = aIm;
  for (j++; j < end; j++) {
    fluidLayer(layers, j * FLUID_NUMBERS, along, fluid);
    const sameRe = fluid[0]!;
    const sameIm = fluid[1]!;
    const upRe = fluid[2]!;
    const upIm = fluid[3]!;
    const downRe = fluid[4]!;
    const downIm = fluid[5]!;
    const oldARe = aRe;
    const oldAIm = aIm;
    const oldBRe = bRe;
    const oldBIm = bIm;
    aRe = sameRe * oldARe - sameIm * oldAIm + upRe * cRe - upIm * cIm;
    aIm = sameRe * oldAIm + sameIm * oldARe + upRe * cIm + upIm * cRe;
    bRe = sameRe * oldBRe - sameIm * oldBIm + upRe * dRe - upIm * dIm;
    bIm = sameRe * oldBIm + sameIm * oldBRe + upRe * dIm + upIm * dRe;
    const newCRe = downRe * oldARe - downIm * oldAIm + sameRe * cRe - sameIm * cIm;
    cIm = downRe * oldAIm + downIm * oldARe + sameRe * cIm + sameIm * cRe;
    cRe = newCRe;
    const newDRe = downRe * oldBRe - downIm * oldBIm + sameRe * dRe - sameIm * dIm;
    dIm = downRe * oldBIm + downIm * oldBRe + sameRe * dIm + sameIm * dRe;
    dRe = newDRe;
  }
  out[at] = aRe;
  out[at + 1] = aIm;
  out[at + 2] = bRe;
  out[at + 3] = bIm;
  out[at + 4] = cRe;
  out[at + 5] = cIm;
  out[at + 6] = dRe;
  out[at + 7] = dIm;
}
