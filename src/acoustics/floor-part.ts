import type { Construction } from './construction.ts';
import { belowFloatingPart } from './floating-part.ts';
import { laidOnStandardSlab, STANDARD_SLAB } from './standard-slab.ts';

/**
 * The whole floor; what is left of it below a leaf that floats on a mat; what lies on it, on the standard slab instead; or that
 * slab bare, which is the same for every floor.
 */
export type FloorPart = 'whole' | 'below-floating' | 'laid-on-slab' | 'bare-slab';

/** @throws RangeError if a part is asked for that the floor does not have. */
export function partOfFloor(construction: Construction, part: FloorPart): Construction {
  switch (part) {
    case 'whole':
      return construction;
    case 'below-floating':
      return present(belowFloatingPart(construction), 'the uppermost leaf must lie on a mat for a part below it');
    case 'laid-on-slab':
      return present(laidOnStandardSlab(construction), 'a covering or a leaf on a mat must lie on the floor');
    case 'bare-slab':
      return STANDARD_SLAB;
  }
}

function present(found: Construction | undefined, expected: string): Construction {
  if (!found) throw new RangeError(`${expected}, got none that does`);
  return found;
}
