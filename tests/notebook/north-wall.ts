import type { FlankingWall } from '#src/notebook/types.ts';

/** A wall of calcium silicate beside the joists, going on from the room above to the room below. */
export function northWall(thickness_m: number): FlankingWall {
  return {
    kind: 'homogeneous',
    id: 'north',
    name: 'north wall',
    junctionLength_m: 4,
    height_m: 2.5,
    junction: 'joists',
    straightK_dB: 6,
    cornerK_dB: 9,
    material: 'calcium-silicate',
    thickness_m,
  };
}
