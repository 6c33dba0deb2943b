import { expect, test } from 'vitest';
import { fillCutOff } from '#cells/stack/fill-cut-off.ts';
import type { CavityLayer, FillField } from '#src/notebook/types.ts';
import { practiceRoom } from '../../browser/practice-room.ts';

const [, joists] = practiceRoom().stacks[0]!.layers as [unknown, CavityLayer];

/** Below 235 mm of joists screwed direct, or with the channel's 12.7 mm: a first fill, and on it mineral wool. */
function said(
  first_m: number,
  second: FillField['fillThickness_m'] | FillField,
  support = 'direct',
): string | undefined {
  const wool =
    typeof second === 'object' && 'fill' in second ? second : { fill: 'mineral-wool', fillThickness_m: second };
  const cavity = { ...joists, support, fill: 'glass-fibre', fillThickness_m: first_m, fillsAbove: [wool] };
  return fillCutOff({ units: 'SI' }, cavity as CavityLayer, 1, { thick: 0.1 });
}

test.each([
  ['fits with room above', 0.15, 0.05, undefined],
  ['fits to the brim', 0.185, 0.05, undefined],
  ['is too thick by half', 0.21, 0.05, 'Only 25 mm of it fits in.'],
  ['comes upon a full cavity', 0.235, 0.05, 'The fills below it leave no room for it.'],
  ['comes upon more than a full cavity', 0.5, 0.05, 'The fills below it leave no room for it.'],
  ['is absent in a full cavity', 0.5, 0, undefined],
  ['is none in a full cavity', 0.5, { fill: 'none', fillThickness_m: 0.05 }, undefined],
  ['is a parameter', 0.185, { parameter: 'thick' }, 'Only 50 mm of it fits in.'],
])('a second fill that %s', (_words, first_m, second, words) => {
  expect(said(first_m, second)).toBe(words);
});

test('the height of the support is room too', () => {
  expect(said(0.235, 0.05, 'resilient-channel')).toBe('Only 12.7 mm of it fits in.');
});
