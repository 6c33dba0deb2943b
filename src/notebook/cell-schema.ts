import * as v from 'valibot';
import { THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { LEVEL_RANGE_dB } from '#src/quantities/level-range.ts';
import { LIMITS } from './limits.ts';
import { closed, key, listUpTo, name, nonEmptyListUpTo, numberWithin, textUpTo } from './schema-parts.ts';

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

const BANDS = THIRD_OCTAVES_HZ.length;

const measured = closed({
  id: key,
  name,
  source: v.pipe(textUpTo(LIMITS.source), v.regex(/\S/, 'words on the origin of the numbers')),
  quantity: v.picklist(['airborne', 'impact']),
  bands_Hz: nonEmptyListUpTo(numberWithin(THIRD_OCTAVES_HZ[0]!, THIRD_OCTAVES_HZ.at(-1)!), BANDS),
  values_dB: nonEmptyListUpTo(numberWithin(LEVEL_RANGE_dB.low, LEVEL_RANGE_dB.high), BANDS),
});

const curves = closed({
  kind: v.literal('curves'),
  ...common,
  title: name,
  stack: key,
  quantity: v.picklist(['airborne', 'impact', 'difference', 'impact-difference']),
  overlays: listUpTo(
    v.picklist([
      'mass-law',
      'contour',
      'resonances',
      'critical',
      'paths',
      'uncertainty',
      'limp-panel',
      'double-leaf',
      'floating-floor',
      'bare-slab',
    ]),
    20,
  ),
  lowestBand_Hz: v.exactOptional(v.picklist([20, 50])),
  measured: v.exactOptional(nonEmptyListUpTo(measured, LIMITS.measured)),
});

const ratings = closed({
  kind: v.literal('ratings'),
  ...common,
  title: name,
  stack: key,
  floorAlone: v.exactOptional(v.boolean()),
  laidPart: v.exactOptional(v.boolean()),
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
