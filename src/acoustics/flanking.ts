import type { Construction, FlankingLimit, FlankingWall, Leaf, WallJunction } from './construction.ts';
import { normaliseConstruction } from './normalise-construction.ts';
import { flankingPathR_dB } from './standards/iso-12354-1-simplified.ts';
import { impactPathLn_dB } from './standards/iso-12354-2-path.ts';
import { lightJunctionK_dB } from './standards/light-junction.ts';
import {
  type Junction,
  type JunctionPath,
  leastVibrationReductionIndex_dB,
  vibrationReductionIndex_dB,
} from './standards/vibration-reduction.ts';
import { wallReduction_dB } from './wall-reduction.ts';

/** The floor itself in one band: R and L_n of the sound that comes straight through, dB. */
export interface FloorBand {
  readonly R_dB: number;
  readonly Ln_dB: number;
}

export interface FlankingBand {
  /** Transmission coefficient per area of the floor. */
  readonly tau: number;
  /** L_n by the walls alone; absent where the description of the flanking says nothing about impact. */
  readonly Ln_dB?: number;
}

/** What goes around the floor in the band of this index. */
export type FlankingAt = (band: number, floor: FloorBand) => FlankingBand;

/** R and L_n of a construction, band by band. */
export type PartPredicted = (part: Construction) => {
  readonly R_dB: readonly number[];
  readonly Ln_dB: readonly number[];
};

/**
 * Sound that goes around the floor: a limit curve, or by every wall on three ways (EN 12354-1 and -2:2000): from wall to wall
 * past the floor, from the wall above into the floor, and from the floor into the wall below.
 *
 * Each wall meets the part that carries: the deck with its joists and the ceiling they hold, or without joists the heaviest
 * leaf. What lies above that part or hangs below it counts as a lining on that side of the floor only. For joist floors the
 * method is outside what the standard was made for; measured K_ij are better there.
 * @param predicted Predicts parts of the floor without flanking and leaks; asked only where a part differs from the whole.
 */
export function flankingOf(
  construction: Construction,
  bands_Hz: readonly number[],
  predicted: PartPredicted,
): FlankingAt | undefined {
  const { flanking } = construction;
  if (!flanking) return undefined;
  if (!('walls' in flanking)) return (band) => ({ tau: limitTransmission(flanking, bands_Hz[band]!) });
  return flanking.walls.length > 0 ? aroundWalls(construction, flanking.walls, bands_Hz, predicted) : undefined;
}

function limitTransmission(limit: FlankingLimit, band_Hz: number): number {
  return 10 ** (-(limit.R500_dB + limit.slope_dB_per_octave * Math.log2(band_Hz / 500)) / 10);
}

function aroundWalls(
  construction: Construction,
  walls: readonly FlankingWall[],
  bands_Hz: readonly number[],
  predicted: PartPredicted,
): FlankingAt {
  const floorArea_m2 = construction.length_m * construction.width_m;
  const { carrying_kg_m2, partsAt } = carryingParts(construction, predicted);
  const reductions = walls.map((wall) => wallReduction_dB(wall, bands_Hz));

  return (band, floor) => {
    const { upper, lower, bare } = partsAt(band, floor);
    let tau = 0;
    let impact = 0;
    walls.forEach((wall, w) => {
      const { junctionLength_m } = wall;
      const wallR_dB = reductions[w]![band]!;
      const wallArea_m2 = junctionLength_m * wall.height_m;
      const K_dB = (path: JunctionPath, otherArea_m2: number) =>
        Math.max(
          junctionK_dB(wall.junction, path, wall.surfaceMass_kg_m2, carrying_kg_m2, bands_Hz[band]!),
          leastVibrationReductionIndex_dB(junctionLength_m, wallArea_m2, otherArea_m2),
        );
      const straightK_dB = K_dB('straight', wallArea_m2);
      const cornerK_dB = K_dB('corner', floorArea_m2);
      const path_dB = (receivingR_dB: number, vibrationReductionIndex_dB: number) =>
        flankingPathR_dB({
          sourceR_dB: wallR_dB,
          receivingR_dB,
          sourceLining_dB: 0,
          receivingLining_dB: 0,
          vibrationReductionIndex_dB,
          separatingArea_m2: floorArea_m2,
          junctionLength_m,
        });
      const corner_dB = path_dB(bare.R_dB, cornerK_dB);
      tau += energy(-path_dB(wallR_dB, straightK_dB));
      tau += energy(-corner_dB - (lower.R_dB - bare.R_dB));
      tau += energy(-corner_dB - (upper.R_dB - bare.R_dB));
      impact += energy(
        impactPathLn_dB({
          floorLn_dB: upper.Ln_dB,
          floorR_dB: bare.R_dB,
          wallR_dB,
          vibrationReductionIndex_dB: cornerK_dB,
          floorArea_m2,
          junctionLength_m,
        }),
      );
    });
    return { tau, Ln_dB: 10 * Math.log10(impact) };
  };
}

const energy = (level_dB: number): number => 10 ** (level_dB / 10);

const RIGID: Readonly<Record<'cross' | 'tee' | 'light-facade', Junction>> = {
  cross: 'rigid cross',
  tee: 'rigid T',
  'light-facade': 'light facade',
};

function junctionK_dB(
  junction: WallJunction,
  path: JunctionPath,
  wall_kg_m2: number,
  floor_kg_m2: number,
  frequency_Hz: number,
): number {
  if (junction.kind === 'measured') return path === 'straight' ? junction.straightK_dB : junction.cornerK_dB;
  if (junction.kind === 'joists') {
    return lightJunctionK_dB({ path, heavy_kg_m2: wall_kg_m2, light_kg_m2: floor_kg_m2, frequency_Hz });
  }
  return vibrationReductionIndex_dB({
    junction: RIGID[junction.kind],
    path,
    mass_kg_m2: wall_kg_m2,
    massAcross_kg_m2: floor_kg_m2,
  });
}

interface FloorParts {
  /** The carrying part with all that lies on it, with all that hangs below it, and alone. */
  readonly upper: FloorBand;
  readonly lower: FloorBand;
  readonly bare: FloorBand;
}

function carryingParts(construction: Construction, predicted: PartPredicted) {
  const { leaves, interlayers } = normaliseConstruction(construction);
  const last = leaves.length - 1;
  const framed = interlayers.flatMap((layer, i) => (layer.kind === 'cavity' && layer.joists !== 'none' ? [i] : []));
  const heaviest = leaves.reduce((best, leaf, i) => (mass_kg_m2(leaf) > mass_kg_m2(leaves[best]!) ? i : best), 0);
  const from = framed[0] ?? heaviest;
  const to = framed.length > 0 ? framed.at(-1)! + 1 : heaviest;

  const { flanking: _flanking, leaks: _leaks, covering, ...floor } = construction;
  const part = (first: number, end: number) => {
    if (first === 0 && end === last) return undefined;
    const layers = leaves
      .slice(first, end + 1)
      .flatMap((leaf, i) => (i === 0 ? [leaf] : [interlayers[first + i - 1]!, leaf]));
    return predicted({ ...floor, ...(first === 0 && covering && { covering }), layers });
  };
  const upper = part(0, to);
  const lower = part(from, last);
  const bare = from === 0 ? upper : to === last ? lower : part(from, to);

  return {
    carrying_kg_m2: leaves.slice(from, to + 1).reduce((sum, leaf) => sum + mass_kg_m2(leaf), 0),
    partsAt: (band: number, whole: FloorBand): FloorParts => {
      const bandOf = (prediction: typeof upper): FloorBand =>
        prediction ? { R_dB: prediction.R_dB[band]!, Ln_dB: prediction.Ln_dB[band]! } : whole;
      return { upper: bandOf(upper), lower: bandOf(lower), bare: bandOf(bare) };
    },
  };
}

function mass_kg_m2({ sheets }: Leaf): number {
  return sheets.reduce((sum, sheet) => sum + sheet.thickness_m * sheet.density_kg_m3, 0);
}
