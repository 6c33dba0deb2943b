import * as v from 'valibot';
import {
  CAVITY_FIELDS,
  CONTACT_LABELS,
  FILLS_ABOVE_FIELDS,
  JOIST_LABELS,
  LEAK_FIELDS,
  MAT_FIELDS,
  type NumberSpec,
  SHEET_FIELDS,
  STACK_FIELDS,
  SUPPORT_LABELS,
} from './field-specs.ts';
import { flankingSchema } from './flanking-schema.ts';
import { LIMITS } from './limits.ts';
import { ownMaterial } from './material-schema.ts';
import { closed, field, key, listUpTo, name, nonEmptyListUpTo, numberWithin, oneOf, textUpTo } from './schema-parts.ts';

/** A stack as it stands in a notebook: every number or choice a literal or a reference to a parameter. */
export const stackSchema = stackSchemaOf(field);

/** A stack on its own, as `predict --stack` reads it: with literals only, its own materials and what goes around it. */
export const bareStackSchema = closed({
  ...stackSchemaOf(((literal: unknown) => literal) as typeof field).entries,
  materials: v.exactOptional(listUpTo(ownMaterial, LIMITS.materials)),
  flanking: v.exactOptional(flankingSchema),
});

function stackSchemaOf(may: typeof field) {
  const quantity = ({ min, max, whyNotMore }: NumberSpec) => may(numberWithin(min, max, whyNotMore));
  const optional = (spec: NumberSpec) => v.exactOptional(quantity(spec));
  const materialKey = may(key);

  const sheet = closed({
    material: materialKey,
    thickness_m: quantity(SHEET_FIELDS.thickness_m),
    density_kg_m3: optional(SHEET_FIELDS.density_kg_m3),
  });

  const leaf = closed({
    kind: v.literal('leaf'),
    id: key,
    name,
    contact: may(oneOf(CONTACT_LABELS)),
    sheets: nonEmptyListUpTo(sheet, LIMITS.sheets),
  });

  const mat = closed({
    kind: v.literal('mat'),
    id: key,
    name,
    thickness_m: quantity(MAT_FIELDS.thickness_m),
    dynamicStiffness_N_m3: quantity(MAT_FIELDS.dynamicStiffness_N_m3),
    lossFactor: quantity(MAT_FIELDS.lossFactor),
    source: v.exactOptional(textUpTo(LIMITS.source)),
  });

  const fill = {
    fill: materialKey,
    fillThickness_m: quantity(CAVITY_FIELDS.fillThickness_m),
  };

  const cavity = closed({
    kind: v.literal('cavity'),
    id: key,
    name,
    joists: may(oneOf(JOIST_LABELS)),
    depth_m: quantity(CAVITY_FIELDS.depth_m),
    joistWidth_m: quantity(CAVITY_FIELDS.joistWidth_m),
    joistSpacing_m: quantity(CAVITY_FIELDS.joistSpacing_m),
    support: may(oneOf(SUPPORT_LABELS)),
    supportLineSpacing_m: optional(CAVITY_FIELDS.supportLineSpacing_m),
    supportPointSpacing_m: optional(CAVITY_FIELDS.supportPointSpacing_m),
    supportHeight_m: optional(CAVITY_FIELDS.supportHeight_m),
    supportStiffness_N_m: optional(CAVITY_FIELDS.supportStiffness_N_m),
    hangerFrequency_Hz: optional(CAVITY_FIELDS.hangerFrequency_Hz),
    ...fill,
    fillsAbove: v.exactOptional(listUpTo(closed(fill), FILLS_ABOVE_FIELDS.length)),
  });

  const slit = closed({
    kind: v.literal('slit'),
    id: key,
    name,
    width_m: quantity(LEAK_FIELDS.slit.width_m),
    length_m: quantity(LEAK_FIELDS.slit.length_m),
    depth_m: quantity(LEAK_FIELDS.slit.depth_m),
  });

  const hole = closed({
    kind: v.literal('hole'),
    id: key,
    name,
    diameter_m: quantity(LEAK_FIELDS.hole.diameter_m),
    depth_m: quantity(LEAK_FIELDS.hole.depth_m),
  });

  return closed({
    id: key,
    name,
    length_m: quantity(STACK_FIELDS.length_m),
    width_m: quantity(STACK_FIELDS.width_m),
    covering: materialKey,
    layers: listUpTo(v.variant('kind', [leaf, mat, cavity]), LIMITS.layers),
    leaks: v.exactOptional(listUpTo(v.variant('kind', [slit, hole]), LIMITS.leaks)),
  });
}
