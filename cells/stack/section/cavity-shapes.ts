import type { Cavity, Leaf } from '#src/acoustics/construction.ts';
import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';
import { joistMiddles_m, joistShapes } from './joist-shapes.ts';
import type { Box, Dimension, Line, Shape } from './section.ts';
import { supportShapes } from './support-shapes.ts';

export interface CavityPlace {
  readonly cavity: Cavity;
  readonly above: Leaf;
  readonly below: Leaf;
  /** Underside of the leaf above, m. */
  readonly top_m: number;
  readonly width_m: number;
  /** Index of the cavity in the construction. */
  readonly layer: number;
}

/** Fill first, then what stands in it, then what holds the ceiling. */
export function cavityShapes(place: CavityPlace): readonly Shape[] {
  const { cavity, top_m, width_m, layer } = place;
  const joists = cavity.joists === 'none' ? [] : joistMiddles_m(cavity.joistSpacing_m, width_m);
  return [
    ...fillShapes(place),
    ...joists.flatMap((x) => joistShapes(cavity, x, top_m, layer)),
    ...deckScrews(place, joists),
    ...supportShapes(place, joists),
  ];
}

/** Depth of the joists or the gap, then what the support adds. */
export function cavityDimensions({ cavity, top_m, layer }: CavityPlace): readonly Dimension[] {
  const middle_m = top_m + cavity.depth_m;
  const bottom_m = top_m + cavityDepth_m(cavity);
  return [
    ...(middle_m > top_m ? [{ from_m: top_m, to_m: middle_m, of: 'cavity' as const, layer }] : []),
    ...(bottom_m > middle_m ? [{ from_m: middle_m, to_m: bottom_m, of: 'support' as const, layer }] : []),
  ];
}

/** Fibre lies on the lower leaf, kind by kind from there up, and never above the leaf over it. */
function fillShapes({ cavity, top_m, width_m, layer }: CavityPlace): readonly Box[] {
  let bottom_m = top_m + cavityDepth_m(cavity);
  return cavity.fill.flatMap(({ thickness_m }): readonly Box[] => {
    const height_m = Math.min(thickness_m, bottom_m - top_m);
    if (height_m <= 0) return [];
    bottom_m -= height_m;
    return [{ shape: 'box', part: 'fill', hatch: 'insulation', layer, x_m: 0, y_m: bottom_m, width_m, height_m }];
  });
}

/** Length of a screw in the joist, m. Common practice, no source. */
export const SCREW_IN_JOIST_m = 0.025;

/** A deck of boards is fastened to its joists; a slab cast on them is not. */
function deckScrews({ above, top_m, layer, cavity }: CavityPlace, joists: readonly number[]): readonly Line[] {
  const lowest = above.sheets.at(-1)!;
  if (lowest.form !== 'board') return [];
  const length_m = Math.min(SCREW_IN_JOIST_m, cavity.depth_m);
  return joists.map((x) => ({
    shape: 'line',
    part: 'screw',
    layer,
    points_m: [
      [x, top_m - lowest.thickness_m],
      [x, top_m + length_m],
    ],
  }));
}
