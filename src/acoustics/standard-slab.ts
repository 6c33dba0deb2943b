import type { Construction, Leaf, Sheet } from './construction.ts';
import { SHEET_MATERIALS } from './materials.ts';
import { normaliseConstruction } from './normalise-construction.ts';

const { key: _, ...CONCRETE } = SHEET_MATERIALS.find(({ key }) => key === 'concrete')!;
export const STANDARD_SLAB_SHEET: Sheet = { ...CONCRETE, thickness_m: 0.14 };
const SLAB: Leaf = { kind: 'leaf', contact: 'loose', sheets: [STANDARD_SLAB_SHEET] };

/**
 * The heavy standard floor that coverings and floating floors are compared on: a bare slab of concrete, 10 m².
 *
 * Source: ISO 10140-5:2010, Annex C, 120 (+40, −20) mm, preferably 140 mm (from memory, unverified). ASTM E2179 has 150 mm
 * (from memory), on which the ratings of an improvement are the same within 1 dB (`tests/acoustics/laid-improvement.test.ts`).
 */
export const STANDARD_SLAB: Construction = { length_m: 4, width_m: 2.5, layers: [SLAB] };

/**
 * What lies on a floor, on the standard slab instead: the covering, and the leaves with the mats under them down to the first
 * leaf that lies on none, which is taken for what carries. What lies on that without a mat between stays with it.
 *
 * @returns Undefined where there is neither a covering nor an uppermost leaf on a mat.
 * @throws RangeError if no leaf has a thickness.
 */
export function laidOnStandardSlab(construction: Construction): Construction | undefined {
  const { covering } = construction;
  const { leaves, interlayers } = normaliseConstruction(construction);
  const cavity = interlayers.findIndex(({ kind }) => kind === 'cavity');
  const mats = cavity === -1 ? interlayers : interlayers.slice(0, cavity);
  if (mats.length === 0 && !covering) return undefined;
  const floating = mats.flatMap((mat, i) => [leaves[i]!, mat]);
  return { ...STANDARD_SLAB, ...(covering && { covering }), layers: [...floating, SLAB] };
}
