import * as v from 'valibot';
import type { NumberSpec } from './field-specs.ts';
import { LIMITS } from './limits.ts';
import { closed, key, listUpTo, name, numberWithin, oneOf } from './schema-parts.ts';
import type { WallMaterial } from './types.ts';
import { JUNCTION_LABELS, WALL_FIELDS } from './wall-fields.ts';
import { WALL_MATERIALS } from './wall-materials.ts';

const within = ({ min, max }: NumberSpec) => numberWithin(min, max);

const common = {
  id: key,
  name,
  junctionLength_m: within(WALL_FIELDS.junctionLength_m),
  height_m: within(WALL_FIELDS.height_m),
  junction: oneOf(JUNCTION_LABELS),
  straightK_dB: within(WALL_FIELDS.straightK_dB),
  cornerK_dB: within(WALL_FIELDS.cornerK_dB),
};

const homogeneousWall = closed({
  kind: v.literal('homogeneous'),
  ...common,
  material: v.picklist(Object.keys(WALL_MATERIALS) as WallMaterial[]),
  thickness_m: within(WALL_FIELDS.thickness_m),
});

const ratedWall = closed({
  kind: v.literal('rated'),
  ...common,
  surfaceMass_kg_m2: within(WALL_FIELDS.surfaceMass_kg_m2),
  Rw_dB: within(WALL_FIELDS.Rw_dB),
});

/** The limits of a limit curve, for the schema and for those who ask for it. */
export const LIMIT_CURVE = { R500_dB: { min: 0, max: 150 }, slope_dB_per_octave: { min: -10, max: 20 } } as const;

export const flankingSchema = closed({
  kind: v.picklist(['none', 'well isolated', 'ordinary', 'weak', 'own', 'by the walls']),
  R500_dB: numberWithin(LIMIT_CURVE.R500_dB.min, LIMIT_CURVE.R500_dB.max),
  slope_dB_per_octave: numberWithin(LIMIT_CURVE.slope_dB_per_octave.min, LIMIT_CURVE.slope_dB_per_octave.max),
  walls: v.exactOptional(listUpTo(v.variant('kind', [homogeneousWall, ratedWall]), LIMITS.walls)),
});
