import { expect, test } from 'vitest';
import { FIBRE_MATERIAL_FIELDS, newMaterial, SHEET_MATERIAL_FIELDS } from '#cells/stack/own-material-fields.ts';
import { hatchOfMaterial } from '#cells/stack/section/hatch-of.ts';
import { SHEET_MATERIALS } from '#src/acoustics/materials.ts';
import { addOwnMaterial } from '#src/notebook/edits/edit-materials.ts';
import { readNotebook } from '#src/notebook/read-file.ts';
import type { OwnMaterial } from '#src/notebook/types.ts';
import { percussionNotebook } from '../../charts/percussion-notebook.ts';

function accepts(material: OwnMaterial): boolean {
  const text = JSON.stringify({ ...percussionNotebook(), materials: [material] });
  return readNotebook(text).ok;
}

test.each(['sheet', 'fibre'] as const)('a new %s is one that files may hold, under a key of its own', (kind) => {
  const first = newMaterial(percussionNotebook(), kind);
  expect(accepts(first)).toBe(true);
  const second = newMaterial(addOwnMaterial(percussionNotebook(), first), kind);
  expect(second.key).not.toBe(first.key);
});

const FIELDS = [
  ...SHEET_MATERIAL_FIELDS.map((f) => ['sheet' as const, f.name, f.min, f.max] as const),
  ...FIBRE_MATERIAL_FIELDS.map((f) => ['fibre' as const, f.name, f.min, f.max] as const),
];

test.each(FIELDS)('%s %s: the limits of the field are those of the file', (kind, name, min, max) => {
  const material = newMaterial(percussionNotebook(), kind);
  const at = (value: number) => accepts({ ...material, [name]: value } as OwnMaterial);
  expect(at(min)).toBe(true);
  expect(at(max)).toBe(true);
  expect(at(min - 1e-6 * Math.max(1, Math.abs(min)))).toBe(false);
  expect(at(max * 1.000001 + 1e-9)).toBe(false);
});

test('every built-in sheet material has a hatch of its own choosing', () => {
  // An unknown key falls back on the form: none of the built-in ones may rely on that.
  for (const { key, form } of SHEET_MATERIALS) {
    const other = form === 'slab' ? 'board' : 'slab';
    expect(hatchOfMaterial(key, form), key).toBe(hatchOfMaterial(key, other));
  }
});
