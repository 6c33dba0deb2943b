import { expect, test } from 'vitest';
import { MATERIAL_SOURCES } from '#src/acoustics/material-sources.ts';
import { COVERINGS, FIBRE_MATERIALS, MAT_PRODUCTS, SHEET_MATERIALS } from '#src/acoustics/materials.ts';
import { FIELD_VALUE_NAMES } from '#src/acoustics/ratings/field-values.ts';

test('symbols of quantities have primes, not straight marks', () => {
  const materials = [...SHEET_MATERIALS, ...FIBRE_MATERIALS, ...MAT_PRODUCTS, ...COVERINGS].map((m) => m.name);
  const sources = Object.values(MATERIAL_SOURCES).flatMap((byKey) => Object.values(byKey));
  const values = FIELD_VALUE_NAMES.map((v) => v.name);
  const all = [...materials, ...sources, ...values];
  expect(all.filter((text) => /\b[sRLm]'/.test(text))).toEqual([]);
  expect(all.some((text) => text.includes('s′'))).toBe(true);
  expect(values).toEqual(expect.arrayContaining(['R′w', 'L′n,w', 'L′nT,w']));
});
