import * as v from 'valibot';
import { LIMITS } from './limits.ts';
import { closed, key, listUpTo, name, textUpTo } from './schema-parts.ts';

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

const ratings = closed({ kind: v.literal('ratings'), ...common, title: name, stack: key });

const paths = closed({
  kind: v.literal('paths'),
  ...common,
  title: name,
  stack: key,
  sound: v.picklist(['airborne', 'impact']),
});

export const cellSchema = v.variant('kind', [commentary, parameters, stack, curves, ratings, paths]);
