/**
 * The shape of the document as a schema: what `types.ts` says to the compiler, this says to a file. The compiler checks
 * in `tests/notebook/schema.test.ts` that the two agree. What one object cannot know by itself (is there such a
 * parameter?) is checked in `checks/`.
 */
import * as v from 'valibot';
import { cellSchema } from './cell-schema.ts';
import { flankingSchema } from './flanking-schema.ts';
import { LIMITS } from './limits.ts';
import { ownMaterial } from './material-schema.ts';
import {
  closed,
  either,
  finite,
  isObject,
  key,
  listUpTo,
  name,
  nonEmptyListUpTo,
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
  materials: listUpTo(ownMaterial, LIMITS.materials),
  flanking: flankingSchema,
  cells: listUpTo(cellSchema, LIMITS.cells),
  scenarios: nonEmptyListUpTo(scenario, LIMITS.scenarios),
  shown: nonEmptyListUpTo(key, LIMITS.scenarios),
  reference: key,
  active: key,
});
