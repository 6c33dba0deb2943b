/** What a layer holds when it is new. */
import type { CavityLayer, FillField, LeafLayer, MatLayer, SheetField, UnitSystem } from '#src/notebook/types.ts';

/**
 * Sizes of the trade: round ones in inches, in millimetres as they are sold there (OSB of 18.3 mm is what is called
 * 23/32 in, 406 mm are 16 in). Common practice, no source.
 */
const SIZES = {
  SI: { topping_m: 0.038, deck_m: 0.0183, mat_m: 0.01, depth_m: 0.1, joist_m: 0.038, spacing_m: 0.406, fill_m: 0.05 },
  // 1 1/2, 3/4, 3/8, 4, 1 1/2, 16 and 2 in.
  'inch-pound': {
    topping_m: 0.0381,
    deck_m: 0.01905,
    mat_m: 0.009525,
    depth_m: 0.1016,
    joist_m: 0.0381,
    spacing_m: 0.4064,
    fill_m: 0.0508,
  },
} as const;

/** 1/2 in in either system. */
export const BOARD: SheetField = { material: 'gypsum-board', thickness_m: 0.0127 };

export function newSlab(id: string, units: UnitSystem): LeafLayer {
  return newLeaf(id, 'floating slab', { material: 'cellular-concrete', thickness_m: SIZES[units].topping_m });
}

export function newDeck(id: string, units: UnitSystem): LeafLayer {
  return newLeaf(id, 'deck', { material: 'osb', thickness_m: SIZES[units].deck_m });
}

export function newCeiling(id: string): LeafLayer {
  return newLeaf(id, 'ceiling', BOARD);
}

/** 10 mm at 20 MN/m³: the middle of what footfall mats have. Common practice, no source. */
export function newMat(id: string, units: UnitSystem): MatLayer {
  return { kind: 'mat', id, name: 'mat', thickness_m: SIZES[units].mat_m, dynamicStiffness_N_m3: 2e7, lossFactor: 0.1 };
}

export function newCavity(id: string, units: UnitSystem): CavityLayer {
  const { depth_m, joist_m, spacing_m, fill_m } = SIZES[units];
  return {
    kind: 'cavity',
    id,
    name: 'cavity',
    joists: 'none',
    depth_m,
    joistWidth_m: joist_m,
    joistSpacing_m: spacing_m,
    support: 'hangers',
    fill: 'glass-fibre',
    fillThickness_m: fill_m,
  };
}

/** Of the other fibre than a new cavity has: two of one kind would be one. */
export function newFill(units: UnitSystem): FillField {
  return { fill: 'mineral-wool', fillThickness_m: SIZES[units].fill_m };
}

function newLeaf(id: string, name: string, sheet: SheetField): LeafLayer {
  return { kind: 'leaf', id, name, contact: 'loose', sheets: [sheet] };
}
