import { listed } from '#src/acoustics/listed.ts';
import { FIELD_VALUE_NAMES } from '#src/acoustics/ratings/field-values.ts';
import type { StackPrediction } from './predict-notebook.ts';
import { columns, whole } from './text-columns.ts';
import type { TitledStack } from './titled-stack.ts';

/** Values as measured in the building, and how much of the sound that goes around the floor is in them. */
export function fieldBlock(stacks: readonly TitledStack[]): readonly string[] {
  const rows = stacks.flatMap(({ title, stack: { field } }) =>
    field ? [[title, ...FIELD_VALUE_NAMES.map(({ key }) => whole(field[key]))]] : [],
  );
  if (rows.length === 0) return [];
  const { heading, remarks } = WORDS[counted(stacks.map(({ stack }) => stack))];
  const limits = new Set(stacks.flatMap(({ stack }) => stack.field?.limits ?? []));
  const head = ['', ...FIELD_VALUE_NAMES.map(({ name }) => name)];
  return [[heading, columns([head, ...rows]), ...remarks, ...limits].join('\n')];
}

type Counted = 'nothing' | 'airborne' | 'both';

/** Flanking belongs to a notebook, so that all stacks have it alike. */
function counted(stacks: readonly Pick<StackPrediction, 'wallsCounted'>[]): Counted {
  const sounds = stacks[0]?.wallsCounted ?? [];
  return sounds.includes('impact') ? 'both' : sounds.includes('airborne') ? 'airborne' : 'nothing';
}

const IMPACT_NAMES = FIELD_VALUE_NAMES.filter(({ sound }) => sound === 'impact').map(({ name }) => name);
const LEVEL_NAMES = FIELD_VALUE_NAMES.filter(({ isLevel }) => isLevel).map(({ name }) => name);

const WORDS: Readonly<Record<Counted, { readonly heading: string; readonly remarks: readonly string[] }>> = {
  nothing: {
    heading: 'As it would be measured in the building if nothing went around the floor:',
    remarks: [
      `No flanking is stated, so that these are limits: in a building ${listed(LEVEL_NAMES)} are at least, all others at most this.`,
    ],
  },
  airborne: {
    heading: 'As it would be measured in the building, with the flanking of the notebook for airborne sound:',
    remarks: [
      `The limit stated for flanking says nothing about impact sound: ${listed(IMPACT_NAMES)} are those of the floor alone, the best that they can be.`,
    ],
  },
  both: { heading: 'As it would be measured in the building, with the flanking of the notebook:', remarks: [] },
};
