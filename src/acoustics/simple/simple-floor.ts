import type { Construction, Interlayer, Sheet } from '../construction.ts';
import { normaliseConstruction } from '../normalise-construction.ts';

/** What textbook models see of a floor: masses and what lies between them. */
export interface SimpleFloor {
  readonly hasCovering: boolean;
  readonly leaves: readonly SimpleLeaf[];
  /** One fewer than leaves. */
  readonly interlayers: readonly Interlayer[];
}

export interface SimpleLeaf {
  /** With what lies on it without stiffness of its own. */
  readonly surfaceMass_kg_m2: number;
  /** Concrete or screed through and through. */
  readonly isSlab: boolean;
}

/** @throws RangeError if no leaf has a thickness. */
export function simpleFloor(construction: Construction): SimpleFloor {
  const { leaves, interlayers } = normaliseConstruction(construction);
  const { covering } = construction;
  const carried = (index: number) => (index === 0 ? (covering?.surfaceMass_kg_m2 ?? 0) : 0);
  return {
    hasCovering: covering !== undefined,
    leaves: leaves.map(({ sheets }, i) => simpleLeaf(sheets, carried(i))),
    interlayers,
  };
}

function simpleLeaf(sheets: readonly Sheet[], carried_kg_m2: number): SimpleLeaf {
  return {
    surfaceMass_kg_m2: sheets.reduce((sum, s) => sum + s.density_kg_m3 * s.thickness_m, carried_kg_m2),
    isSlab: sheets.every(({ form }) => form === 'slab'),
  };
}
