import { describe, expect, test } from 'vitest';
import { MATERIAL_SOURCES, type MaterialKind } from '#src/acoustics/material-sources.ts';
import { COVERINGS, FIBRE_MATERIALS, MAT_PRODUCTS, SHEET_MATERIALS } from '#src/acoustics/materials.ts';

const ROWS: Record<MaterialKind, readonly { readonly key: string }[]> = {
  sheet: SHEET_MATERIALS,
  fibre: FIBRE_MATERIALS,
  mat: MAT_PRODUCTS,
  covering: COVERINGS,
};

describe.each(Object.keys(ROWS) as MaterialKind[])('of kind %s', (kind) => {
  test('every material says where its numbers come from, and no source is left over', () => {
    expect(Object.keys(MATERIAL_SOURCES[kind]).toSorted()).toEqual(ROWS[kind].map(({ key }) => key).toSorted());
  });

  test('no source is empty', () => {
    for (const [key, source] of Object.entries(MATERIAL_SOURCES[kind])) expect(source, key).toMatch(/\w{4}/);
  });
});
