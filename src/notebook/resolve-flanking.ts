import type { Construction, FlankingWall as EngineWall, WallReduction } from '#src/acoustics/construction.ts';
import { NAMED_FLANKING } from './flanking-limits.ts';
import type { Flanking, FlankingWall } from './types.ts';
import { WALL_MATERIALS } from './wall-materials.ts';

/** What the engine is given; undefined where nothing goes around. */
export function resolveFlanking(flanking: Flanking): Construction['flanking'] {
  switch (flanking.kind) {
    case 'none':
      return undefined;
    case 'own':
      return { R500_dB: flanking.R500_dB, slope_dB_per_octave: flanking.slope_dB_per_octave };
    case 'by the walls':
      return flanking.walls?.length ? { walls: flanking.walls.map(resolveWall) } : undefined;
    default:
      return NAMED_FLANKING[flanking.kind];
  }
}

/** One wall as the engine is given it. */
export function resolveWall(wall: FlankingWall): EngineWall {
  const { name, junctionLength_m, height_m, junction, straightK_dB, cornerK_dB } = wall;
  return {
    name,
    junctionLength_m,
    height_m,
    ...massAndReduction(wall),
    junction: junction === 'measured' ? { kind: junction, straightK_dB, cornerK_dB } : { kind: junction },
  };
}

function massAndReduction(wall: FlankingWall): { surfaceMass_kg_m2: number; reduction: WallReduction } {
  if (wall.kind === 'rated') {
    return { surfaceMass_kg_m2: wall.surfaceMass_kg_m2, reduction: { kind: 'rated', Rw_dB: wall.Rw_dB } };
  }
  const { thickness_m } = wall;
  const { density_kg_m3, longitudinalSpeed_m_s, internalLossFactor } = WALL_MATERIALS[wall.material].properties;
  return {
    surfaceMass_kg_m2: density_kg_m3 * thickness_m,
    reduction: { kind: 'homogeneous', thickness_m, longitudinalSpeed_m_s, internalLossFactor },
  };
}
