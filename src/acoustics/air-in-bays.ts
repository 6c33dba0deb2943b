import type { CavityModel } from './floor-model.ts';

/** Bays without end. */
const FREE = 1e30;

/** Newton steps from sound that the joists do not hold: to 1e-6 of the wave number. */
const STEPS = 4;

/** (b/π)⁴ of the bays between joists, m⁴; without joists so large that waves run freely. */
export function bay4_m4({ cavity }: CavityModel): number {
  return cavity.joists === 'none' ? FREE : (cavity.joistSpacing_m / Math.PI) ** 4;
}

/**
 * The part of kx² that counts in a cavity crossed by joists: they stop sound across them until half a wave fits into a bay;
 * until then, on average, half of kx² is left. Our own.
 */
export function keptShare(bay4: number, kx2: number): number {
  return 1 - 0.5 / (1 + bay4 * kx2 * kx2);
}

/** What counts of kx² between the joists. */
export function insideKx2(bay4: number, kx2: number): number {
  return kx2 * keptShare(bay4, kx2);
}

/** kx² of the wave of which `inside` ≥ 0 counts between the joists: the inverse of `insideKx2`. */
export function outsideKx2(bay4: number, inside: number): number {
  let kx2 = inside;
  for (let step = 0; step < STEPS; step++) {
    const fourth = 1 + bay4 * kx2 * kx2;
    const kept = 1 - 0.5 / fourth;
    const slope = kept + (bay4 * kx2 * kx2) / (fourth * fourth);
    kx2 += (inside - kx2 * kept) / slope;
  }
  return kx2;
}
