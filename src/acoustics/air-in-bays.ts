import type { Cavity } from './construction.ts';

/** How far joists stop the air of a cavity from moving across them. */
export interface AirInBays {
  /** (b/π)⁴ for joists b apart, m⁴. */
  readonly fourth_m4: number;
  /** Part of kx² that is lost while no half wave fits between two joists, 0 to ½. */
  readonly stopped: number;
}

/** Newton steps from sound that the joists do not hold: to 1e-6 of the wave number. */
const STEPS = 4;

/**
 * Sound runs across the joists on average for half of kx². A gap of height g under joists w wide and b apart in a cavity
 * of depth d lets that half through in the ratio b/(b + δ): the air in the gap is as heavy as that of a stretch
 * δ = w(d/g − 1) + (4d/π) ln 1/sin(πg/2d) of cavity (slit beside a wall, one-sided twin of the slit of Morse & Ingard,
 * Theoretical Acoustics, 1968, section 9.1; section from memory).
 * Joists that fill the cavity stop all of that half, joists of no depth nothing. Ceiling joists of their own and fill in
 * the gap are not counted.
 * @param wholeDepth_m d, with the height of the support.
 */
export function baysOf({ joists, joistSpacing_m, joistWidth_m, depth_m }: Cavity, wholeDepth_m: number): AirInBays {
  if (joists === 'none' || joists === 'open-truss') return { fourth_m4: 0, stopped: 0 };
  const fourth_m4 = (joistSpacing_m / Math.PI) ** 4;
  const gap_m = wholeDepth_m - depth_m;
  const delta_m =
    joistWidth_m * (wholeDepth_m / gap_m - 1) +
    ((4 * wholeDepth_m) / Math.PI) * Math.log(1 / Math.sin((Math.PI * gap_m) / (2 * wholeDepth_m)));
  return { fourth_m4, stopped: 0.5 - 0.5 / (1 + delta_m / joistSpacing_m) };
}

/**
 * The part of kx² that counts in a cavity crossed by joists: they stop sound across them until half a wave fits into a bay.
 * Our own.
 */
export function keptShare({ fourth_m4, stopped }: AirInBays, kx2: number): number {
  return 1 - stopped / (1 + fourth_m4 * kx2 * kx2);
}

/** What counts of kx² between the joists. */
export function insideKx2(bays: AirInBays, kx2: number): number {
  return kx2 * keptShare(bays, kx2);
}

/** kx² of the wave of which `inside` ≥ 0 counts between the joists: the inverse of `insideKx2`. */
export function outsideKx2(bays: AirInBays, inside: number): number {
  const { fourth_m4, stopped } = bays;
  let kx2 = inside;
  for (let step = 0; step < STEPS; step++) {
    const fourth = 1 + fourth_m4 * kx2 * kx2;
    const kept = 1 - stopped / fourth;
    const slope = kept + (2 * stopped * fourth_m4 * kx2 * kx2) / (fourth * fourth);
    kx2 += (inside - kx2 * kept) / slope;
  }
  return kx2;
}
