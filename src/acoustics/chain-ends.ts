import { bentAlong, carriedAlong } from './carried-along.ts';
import type { ChainEnds } from './chain-impedance.ts';
import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';
import { joint, type SupportChain } from './supports.ts';

/** A leaf at its fastenings: stiffness and mass per area. */
interface FastenedLeaf {
  readonly bending_Nm: number;
  readonly mass_kg_m2: number;
}

/**
 * What the supports of interlayer `index` are fastened to: the leaves above and below, and to some part what lies on a mat on
 * the other side of them.
 * @param states Stiffness and loss of every leaf at this frequency.
 * @param leaves 'framed' where leaves bend between their fastenings, 'infinite' where free waves run along both.
 */
export function chainEnds(
  model: FloorModel,
  states: readonly PlateState[],
  index: number,
  chain: SupportChain,
  f_Hz: number,
  leaves: 'framed' | 'infinite',
): ChainEnds {
  const withLaid = (leaf: number, mat: number, laid: number, line_m: number): FastenedLeaf => {
    const own = fastened(model, states, leaf);
    if (model.interlayers[mat]?.kind !== 'mat') return own;
    const other = fastened(model, states, laid);
    const part =
      leaves === 'framed'
        ? bentAlong(model, f_Hz, mat, { bending_Nm: other.bending_Nm, line_m })
        : carriedAlong(model, f_Hz, mat);
    return {
      bending_Nm: own.bending_Nm + part * other.bending_Nm,
      mass_kg_m2: own.mass_kg_m2 + part * other.mass_kg_m2,
    };
  };
  const upper = withLaid(index, index - 1, index - 1, chain.upper.line_m);
  const lower = withLaid(index + 1, index + 1, index + 2, (joint(chain) ?? chain.upper).line_m);
  return {
    upperBending_Nm: upper.bending_Nm,
    upperMass_kg_m2: upper.mass_kg_m2,
    lowerBending_Nm: lower.bending_Nm,
    lowerMass_kg_m2: lower.mass_kg_m2,
  };
}

function fastened({ plates }: FloorModel, states: readonly PlateState[], leaf: number): FastenedLeaf {
  return { bending_Nm: states[leaf]!.bending_Nm, mass_kg_m2: plates[leaf]!.surfaceMass_kg_m2 };
}
