import * as v from 'valibot';
import { LIMITS } from './limits.ts';
import { closed, key, listUpTo, name, numberWithin, textUpTo } from './schema-parts.ts';

/** Of the room below, for values in the building. Our own choice, no source. */
export const ROOM_LIMITS = { volume_m3: { min: 1, max: 100_000 }, time_s: { min: 0.05, max: 20 } } as const;

const common = { id: key, folded: v.boolean() };

const commentary = closed({ kind: v.literal('commentary'), ...common, text: textUpTo(LIMITS.commentary) });

const parameters = closed({
  kind: v.literal('parameters'),
  ...common,
  title: name,
  parameters: listUpTo(key, LIMITS.parameters),
});

const stack = closed({ kind: v.literal('stack'), ...common, stack: key });

const curves = closed({
  kind: v.literal('curves'),
  ...common,
  title: name,
  stack: key,
  quantity: v.picklist(['airborne', 'impact', 'difference', 'impact-difference']),
  overlays: listUpTo(v.picklist(['mass-law', 'contour', 'resonances', 'critical', 'paths', 'uncertainty']), 20),
});

const ratings = closed({
  kind: v.literal('ratings'),
  ...common,
  title: name,
  stack: key,
  receivingVolume_m3: v.exactOptional(numberWithin(ROOM_LIMITS.volume_m3.min, ROOM_LIMITS.volume_m3.max)),
  reverberationTime_s: v.exactOptional(numberWithin(ROOM_LIMITS.time_s.min, ROOM_LIMITS.time_s.max)),
});

const paths = closed({
  kind: v.literal('paths'),
  ...common,
  title: name,
  stack: key,
  sound: v.picklist(['airborne', 'impact']),
});

export const cellSchema = v.variant('kind', [commentary, parameters, stack, curves, ratings, paths]);
