import { type Air, ROOM_AIR } from './air.ts';
import { type AirInBays, baysOf } from './air-in-bays.ts';
import { checkConstruction } from './check-construction.ts';
import type { Cavity, Construction, Interlayer, Mat } from './construction.ts';
import { leafEdges } from './leaf-edges.ts';
import { type LeafPlate, leafPlate } from './leaf-plate.ts';
import { LEAST_LOSS_FACTOR } from './least-loss.ts';
import { carriedByMat_kg_m2, matUnderLoad } from './mat-under-load.ts';
import type { ModelConstants } from './model-constants.ts';
import { cavityDepth_m, normaliseConstruction } from './normalise-construction.ts';
import type { PlateEdges } from './resonant-radiation.ts';
import { joint, type SupportChain, supportChain } from './supports.ts';

/** A construction made ready for the kernels: what does not depend on frequency. */
export interface FloorModel {
  readonly air: Air;
  readonly constants: ModelConstants;
  readonly construction: Construction;
  readonly plates: readonly LeafPlate[];
  /** One fewer than plates. */
  readonly interlayers: readonly InterlayerModel[];
  readonly edges: PlateEdges;
  /** Edges of each leaf, the lines it is screwed to included. */
  readonly leafEdges: readonly PlateEdges[];
  readonly orthotropic: boolean;
}

export type InterlayerModel = MatModel | CavityModel;

export interface MatModel {
  readonly kind: 'mat';
  /** As stiff as under the floor it carries; its loss `LEAST_LOSS_FACTOR` at least. */
  readonly mat: Mat;
}

export interface CavityModel {
  readonly kind: 'cavity';
  readonly cavity: Cavity;
  /** With the height of the support, m. */
  readonly depth_m: number;
  readonly bays: AirInBays;
  /** Fluid layers from the lower leaf up, thicknesses adding to the depth; air has no flow resistivity. */
  readonly fluids: readonly FluidLayer[];
  readonly chain?: SupportChain;
}

export interface FluidLayer {
  readonly thickness_m: number;
  readonly flowResistivity_Pa_s_m2?: number;
}

/** @throws RangeError, TypeError as `checkConstruction` and `normaliseConstruction`. */
export function floorModel(construction: Construction, constants: ModelConstants, air: Air = ROOM_AIR): FloorModel {
  checkConstruction(construction);
  const { leaves, interlayers } = normaliseConstruction(construction);
  const covering_kg_m2 = construction.covering?.surfaceMass_kg_m2 ?? 0;
  const plates = leaves.map((leaf, i) => {
    const below = interlayers[i];
    const onJoists = below?.kind === 'cavity' && below.joists !== 'none';
    return leafPlate(
      leaf,
      { onMat: below?.kind === 'mat', onJoists, carried_kg_m2: i === 0 ? covering_kg_m2 : 0 },
      constants,
      air,
    );
  });
  const edges = floorEdges(construction);
  return {
    air,
    constants,
    construction,
    plates,
    interlayers: interlayers.map((_, i) => interlayerModel(interlayers, plates, i, edges, constants)),
    edges,
    leafEdges: plates.map((plate, i) => leafEdges(edges, plate, interlayers[i - 1], interlayers[i], air)),
    orthotropic: plates.some((p) => Math.abs(p.alongRatio - 1) > 1e-9),
  };
}

export function floorEdges({ length_m, width_m }: Construction): PlateEdges {
  return { area_m2: length_m * width_m, perimeter_m: 2 * (length_m + width_m), length_m, width_m };
}

function interlayerModel(
  interlayers: readonly Interlayer[],
  plates: readonly LeafPlate[],
  index: number,
  edges: PlateEdges,
  constants: ModelConstants,
): InterlayerModel {
  const layer = interlayers[index]!;
  if (layer.kind === 'mat') {
    const mat = matUnderLoad(layer, carriedByMat_kg_m2(interlayers, plates, index));
    return { kind: 'mat', mat: { ...mat, lossFactor: Math.max(mat.lossFactor, LEAST_LOSS_FACTOR) } };
  }
  const carried = plates.slice(index + 1).reduce((sum, p) => sum + p.surfaceMass_kg_m2, 0);
  const chain = supportChain(layer, carried, edges, constants);
  const depth_m = cavityDepth_m(layer);
  return {
    kind: 'cavity',
    cavity: layer,
    depth_m,
    bays: baysOf(layer, depth_m),
    fluids: fluidsOf(layer, depth_m),
    ...(chain ? { chain } : {}),
  };
}

/** Fill lies on the lower leaf; more of it than fits is cut off at the top. */
function fluidsOf(cavity: Cavity, depth_m: number): FluidLayer[] {
  const fluids: FluidLayer[] = [];
  let left = depth_m;
  for (const fibre of cavity.fill) {
    const thickness_m = Math.min(fibre.thickness_m, left);
    if (thickness_m <= 0) break;
    fluids.push({ thickness_m, flowResistivity_Pa_s_m2: fibre.flowResistivity_Pa_s_m2 });
    left -= thickness_m;
  }
  if (left > 1e-9) fluids.push({ thickness_m: left });
  return fluids;
}

/** Whether supports hold the leaf below, so that the upper leaf's own resonances and blows come down to it. */
export function holdsLowerLeaf(layer: InterlayerModel): boolean {
  return layer.kind === 'cavity' && layer.chain?.lower !== undefined;
}

/** Whether force comes down to the leaf below at all: through supports or common bearings. */
export function joinsLeaves(layer: InterlayerModel): boolean {
  return layer.kind === 'cavity' && joint(layer.chain) !== undefined;
}
