import { bentAlong, carriedAlong } from './carried-along.ts';
import type { ChainEnds, FastenedLeaves } from './chain-impedance.ts';
import type { Lattice } from './fastening-impedance.ts';
import type { FloorModel } from './floor-model.ts';
import { joinedLeaf } from './joined-leaf.ts';
import type { PlateState } from './leaf-plate.ts';
import { joint, type SupportChain } from './supports.ts';

/** Used by one chain after another. */
const ends: ChainEnds = { upperBending_Nm: 0, upperMass_kg_m2: 0, lowerBending_Nm: 0, lowerMass_kg_m2: 0 };

/**
 * What the supports of interlayer `index` are fastened to: the leaves above and below, and to some part what lies on a mat on
 * the other side of them. The same object every time.
 * @param states Stiffness and loss of every leaf at this frequency.
 */
export function chainEnds(
  model: FloorModel,
  states: readonly PlateState[],
  index: number,
  chain: SupportChain,
  f_Hz: number,
  leaves: FastenedLeaves,
): ChainEnds {
  const { plates, interlayers } = model;
  ends.upperBending_Nm = states[index]!.bending_Nm;
  ends.upperMass_kg_m2 = plates[index]!.surfaceMass_kg_m2;
  ends.lowerBending_Nm = states[index + 1]!.bending_Nm;
  ends.lowerMass_kg_m2 = plates[index + 1]!.surfaceMass_kg_m2;
  const along = (mat: number, laid: number, { line_m }: Lattice): number =>
    leaves === 'framed'
      ? bentAlong(model, f_Hz, mat, { bending_Nm: states[laid]!.bending_Nm, line_m })
      : carriedAlong(model, f_Hz, mat);
  if (interlayers[index - 1]?.kind === 'mat') {
    const upper = joinedLeaf(model, states, index, index - 1, along(index - 1, index - 1, chain.upper));
    ends.upperBending_Nm = upper.bending_Nm;
    ends.upperMass_kg_m2 = upper.surfaceMass_kg_m2;
  }
  if (interlayers[index + 1]?.kind === 'mat') {
    const part = along(index + 1, index + 2, joint(chain) ?? chain.upper);
    const lower = joinedLeaf(model, states, index + 1, index + 2, part);
    ends.lowerBending_Nm = lower.bending_Nm;
    ends.lowerMass_kg_m2 = lower.surfaceMass_kg_m2;
  }
  return ends;
}
