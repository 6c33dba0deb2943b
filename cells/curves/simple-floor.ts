import type { Construction, Interlayer, Sheet } from '#src/acoustics/construction.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';

/** What textbook models see of a floor: masses and what lies between them. */
export interface SimpleFloor {
  readonly leaves: readonly SimpleLeaf[];
  readonly interlayers: readonly Interlayer[];
}

export interface SimpleLeaf {
  /** With what lies on it without stiffness of its own. */
  readonly surfaceMass_kg_m2: number;
  readonly slabs: number;
  readonly boards: number;
}

/** @throws RangeError if no leaf has a thickness. */
export function simpleFloor(construction: Construction): SimpleFloor {
  const { leaves, interlayers } = normaliseConstruction(construction);
  const covering_kg_m2 = construction.covering?.surfaceMass_kg_m2 ?? 0;
  return { leaves: leaves.map(({ sheets }, i) => simpleLeaf(sheets, i === 0 ? covering_kg_m2 : 0)), interlayers };
}

function simpleLeaf(sheets: readonly Sheet[], carried_kg_m2: number): SimpleLeaf {
  const slabs = sheets.filter(({ form }) => form === 'slab').length;
  return {
    surfaceMass_kg_m2: sheets.reduce((sum, s) => sum + s.density_kg_m3 * s.thickness_m, carried_kg_m2),
    slabs,
    boards: sheets.length - slabs,
  };
}
