/** What the walls beside the floor may be: words, limits and usual ranges. The limits are our own, no source. */
import { type NumberSpec, number } from './field-specs.ts';
import type { WallJunctionKind } from './types.ts';

export const WALL_FIELDS = {
  junctionLength_m: number('length along the floor', 'span', [0.3, 100], [1, 20, 0.1]),
  height_m: number('height of the wall', 'span', [0.5, 50], [2, 5, 0.05]),
  thickness_m: number('thickness', 'length', [0.02, 2], [0.05, 0.5, 0.005]),
  surfaceMass_kg_m2: number('mass', 'surface-mass', [5, 5000], [20, 800, 5]),
  Rw_dB: number('Rw', 'level', [10, 100], [30, 65, 1]),
  straightK_dB: number('K straight on', 'level', [-10, 60], [-4, 25, 0.5]),
  cornerK_dB: number('K around the corner', 'level', [-10, 60], [-4, 25, 0.5]),
} as const satisfies Record<string, NumberSpec>;

export type WallField = keyof typeof WALL_FIELDS;

export const JUNCTION_LABELS: Readonly<Record<WallJunctionKind, string>> = {
  cross: 'heavy floor on both sides of the wall',
  tee: 'heavy floor on one side of the wall',
  'light-facade': 'light facade past a heavy floor',
  joists: 'joists against a heavy wall',
  measured: 'measured or stated',
};
