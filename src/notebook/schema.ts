/**
 * The shape of the document as a schema: what `types.ts` says to the compiler, this says to a file. The compiler checks
 * in `tests/notebook/schema.test.ts` that the two agree. What one object cannot know by itself (is there such a
 * parameter?) is checked in `checks/`.
 */
import * as v from 'valibot';
import { COVERING_LIMITS, MODULUS_Pa } from '#src/acoustics/material-limits.ts';
import { cellSchema } from './cell-schema.ts';
import { flankingSchema } from './flanking-schema.ts';
import { LIMITS } from './limits.ts';
import {
  closed,
  either,
  finite,
  isObject,
  key,
  listUpTo,
  name,
  nonEmptyListUpTo,
  numberWithin,
  textUpTo,
  wholeNumberUpTo,
} from './schema-parts.ts';
import { stackSchema } from './stack-schema.ts';
import { FORMAT, VERSION } from './types.ts';

const quantityParameter = closed({
  key,
  label: name,
  quantity: v.picklist([
    'length',
    'span',
    'density',
    'surface-mass',
    'frequency',
    'dynamic-stiffness',
    'stiffness',
    'modulus',
    'flow-resistivity',
    'level',
    'ratio',
  ]),
  value: finite,
  min: finite,
  max: finite,
  step: finite,
});

const choiceParameter = closed({
  key,
  label: name,
  choices: nonEmptyListUpTo(closed({ value: key, label: name }), LIMITS.choices),
  value: key,
});

const parameter = either((input) => isObject(input) && 'choices' in input, choiceParameter, quantityParameter);

const named = { key, name, source: textUpTo(LIMITS.source) };

/** The limits are those of the engine. */
const modulus_Pa = numberWithin(...MODULUS_Pa);

const sheetMaterial = closed({
  kind: v.literal('sheet'),
  ...named,
  form: v.picklist(['slab', 'board']),
  density_kg_m3: numberWithin(20, 20_000),
  youngsModulus_Pa: modulus_Pa,
  youngsModulusAcross_Pa: v.exactOptional(modulus_Pa),
  poissonRatio: numberWithin(0, 0.49),
  lossFactor: numberWithin(1e-4, 1),
  contactStiffness_N_m: v.exactOptional(numberWithin(1, 1e12)),
});

const fibreMaterial = closed({
  kind: v.literal('fibre'),
  ...named,
  density_kg_m3: numberWithin(0, 1000),
  flowResistivity_Pa_s_m2: numberWithin(50, 1e7),
});

const covering = closed({
  kind: v.literal('covering'),
  ...named,
  surfaceMass_kg_m2: numberWithin(...COVERING_LIMITS.surfaceMass_kg_m2),
  thickness_m: numberWithin(...COVERING_LIMITS.thickness_m),
  contactStiffness_N_m: numberWithin(...COVERING_LIMITS.contactStiffness_N_m),
});

const scenario = closed({
  id: key,
  name,
  mark: wholeNumberUpTo(LIMITS.scenarios - 1),
  parent: v.nullable(key),
  changes: v.record(
    key,
    either((input) => typeof input === 'string', key, finite),
  ),
});

export const notebookSchema = closed({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  id: key,
  title: name,
  units: v.picklist(['SI', 'inch-pound']),
  parameters: listUpTo(parameter, LIMITS.parameters),
  stacks: nonEmptyListUpTo(stackSchema, LIMITS.stacks),
  materials: listUpTo(v.variant('kind', [sheetMaterial, fibreMaterial, covering]), LIMITS.materials),
  flanking: flankingSchema,
  cells: listUpTo(cellSchema, LIMITS.cells),
  scenarios: nonEmptyListUpTo(scenario, LIMITS.scenarios),
  shown: nonEmptyListUpTo(key, LIMITS.scenarios),
  reference: key,
  active: key,
});
