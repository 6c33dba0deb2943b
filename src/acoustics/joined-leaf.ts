import type { FloorModel } from './floor-model.ts';
import { withResonance } from './leaf-edges.ts';
import type { PlateState } from './leaf-plate.ts';
import type { PlateEdges } from './resonant-radiation.ts';

/** A leaf as what it bends with makes it. */
export interface JoinedLeaf extends PlateState {
  readonly surfaceMass_kg_m2: number;
  readonly edges: PlateEdges;
}

/**
 * Leaf `leaf` with `part` of leaf `other`, which lies on the other side of a mat: masses and stiffnesses add, losses by stiffness,
 * and the first resonance between the lines that hold it goes with √(B/m').
 * @param states Stiffness and loss of every leaf at this frequency.
 * @param part 0–1, how far both move as one.
 */
export function joinedLeaf(
  { plates, leafEdges }: FloorModel,
  states: readonly PlateState[],
  leaf: number,
  other: number,
  part: number,
): JoinedLeaf {
  const own = states[leaf]!;
  const mass = plates[leaf]!.surfaceMass_kg_m2;
  const edges = leafEdges[leaf]!;
  if (part === 0) return { bending_Nm: own.bending_Nm, lossFactor: own.lossFactor, surfaceMass_kg_m2: mass, edges };
  const gained_Nm = part * states[other]!.bending_Nm;
  const bending_Nm = own.bending_Nm + gained_Nm;
  const surfaceMass_kg_m2 = mass + part * plates[other]!.surfaceMass_kg_m2;
  const higher = Math.sqrt(bending_Nm / surfaceMass_kg_m2 / (own.bending_Nm / mass));
  return {
    bending_Nm,
    lossFactor: (own.bending_Nm * own.lossFactor + gained_Nm * states[other]!.lossFactor) / bending_Nm,
    surfaceMass_kg_m2,
    edges: withResonance(edges, higher),
  };
}
