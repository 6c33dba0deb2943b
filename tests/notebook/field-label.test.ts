import { expect, test } from 'vitest';
import { fieldLabel } from '#src/notebook/field-path.ts';
import type { Stack } from '#src/notebook/types.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const [floor] = practiceRoom().stacks as [Stack];

/** With another name for the layer of the joists. */
function labelled(name: string, field: string): string {
  const fillsAbove = [{ fill: 'mineral-wool', fillThickness_m: 0.05 }];
  const layers = floor.layers.map((layer, i) => (i === 1 ? { ...layer, name, fillsAbove } : layer)) as Stack['layers'];
  return fieldLabel({ ...floor, layers }, ['layers', 1, ...field.split('/').map((s) => (s === '0' ? 0 : s))]);
}

test.each([
  ['joists', 'joistSpacing_m', 'joist spacing'],
  ['joists', 'joists', 'joists'],
  ['old floor joists', 'joistWidth_m', 'old floor joist width'],
  ['joists', 'depth_m', 'joists depth'],
  ['space between', 'joistSpacing_m', 'space between joist spacing'],
  ['fill', 'fillThickness_m', 'fill thickness'],
  ['joists', 'fillsAbove/0/fillThickness_m', 'joists second fill thickness'],
])('%s and its field %s are “%s”', (name, field, label) => {
  expect(labelled(name, field)).toBe(label);
});
