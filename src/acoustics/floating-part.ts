import type { Construction } from './construction.ts';
import { normaliseConstruction } from './normalise-construction.ts';

/** The whole floor, or what is left of it below a leaf that floats on a mat. */
export type FloorPart = 'whole' | 'below-floating';

/** @throws RangeError if a part is asked for that the floor does not have. */
export function partOfFloor(construction: Construction, part: FloorPart): Construction {
  if (part === 'whole') return construction;
  const below = belowFloatingPart(construction);
  if (!below) throw new RangeError('the uppermost leaf must lie on a mat for a part below it, got none that does');
  return below;
}

/** The floor without covering, uppermost leaf and mat; undefined where the uppermost leaf does not lie on a mat. */
export function belowFloatingPart({ covering: _, ...bare }: Construction): Construction | undefined {
  const { leaves, interlayers } = normaliseConstruction(bare);
  if (interlayers[0]?.kind !== 'mat') return undefined;
  const [, ...rest] = leaves;
  return { ...bare, layers: rest.flatMap((leaf, i) => (i === 0 ? [leaf] : [interlayers[i]!, leaf])) };
}
