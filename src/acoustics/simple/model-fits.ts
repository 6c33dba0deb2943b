/** Which floors the textbook models are made for, and what they take of them. */

import { naturalFrequency_Hz } from '../natural-frequency.ts';
import { cavityDepth_m } from '../normalise-construction.ts';
import type { FloatingFloorKind } from './floating-floor.ts';
import type { SimpleFloor, SimpleLeaf } from './simple-floor.ts';
import type { DoubleLeafInput } from './three-branch-double-leaf.ts';

/** Why a model has nothing to say of a floor: a sentence whose subject is the model. */
export type Misfit = string;

export function doubleLeafOf({
  leaves,
  interlayers,
}: SimpleFloor): Pick<DoubleLeafInput, 'upperMass_kg_m2' | 'lowerMass_kg_m2' | 'depth_m'> | Misfit {
  const [upper, lower] = leaves;
  const [between] = interlayers;
  if (!upper || !lower || leaves.length > 2 || between?.kind !== 'cavity') {
    const got = leaves.length === 2 ? 'a mat between' : count(leaves);
    return `it is made for two leaves with a cavity between, and this floor has ${got}`;
  }
  return {
    upperMass_kg_m2: upper.surfaceMass_kg_m2,
    lowerMass_kg_m2: lower.surfaceMass_kg_m2,
    depth_m: cavityDepth_m(between),
  };
}

export interface FloatingLeaf {
  readonly surfaceMass_kg_m2: number;
  /** On its mat over a heavy floor. */
  readonly resonance_Hz: number;
  readonly kind: FloatingFloorKind;
}

export function floatingLeafOf({ leaves: [floating], interlayers: [mat] }: SimpleFloor): FloatingLeaf | Misfit {
  if (!floating || mat?.kind !== 'mat')
    return 'it is made for an uppermost leaf that lies on a mat, and this one does not';
  const { surfaceMass_kg_m2, isSlab } = floating;
  const resonance_Hz = naturalFrequency_Hz(mat.dynamicStiffness_N_m3, surfaceMass_kg_m2);
  return { surfaceMass_kg_m2, resonance_Hz, kind: isSlab ? 'plate' : 'local' };
}

export function bareSlabOf({ hasCovering, leaves }: SimpleFloor): Pick<SimpleLeaf, 'surfaceMass_kg_m2'> | Misfit {
  const [slab] = leaves;
  if (hasCovering || !slab?.isSlab || leaves.length > 1) {
    const got = hasCovering ? 'a covering' : leaves.length > 1 ? count(leaves) : 'boards';
    return `it is made for a slab alone, and this floor has ${got}`;
  }
  return { surfaceMass_kg_m2: slab.surfaceMass_kg_m2 };
}

function count(leaves: readonly SimpleLeaf[]): string {
  return leaves.length === 1 ? 'one leaf' : `${leaves.length} leaves`;
}
