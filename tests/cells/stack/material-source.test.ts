import { expect, test } from 'vitest';
import { knownMat, materialSource } from '#cells/stack/material-source.ts';
import { MATERIAL_SOURCES } from '#src/acoustics/material-sources.ts';
import { MAT_PRODUCTS } from '#src/acoustics/materials.ts';
import type { MatLayer } from '#src/notebook/types.ts';
import { smallNotebook } from '../../notebook/small-notebook.ts';

const own = {
  kind: 'fibre',
  key: 'felt',
  name: 'club felt',
  source: 'weighed in the practice room',
  density_kg_m3: 60,
  flowResistivity_Pa_s_m2: 9000,
} as const;

const rubber = {
  kind: 'covering',
  key: 'rubber',
  name: 'club rubber',
  source: 'data sheet of the maker, invented',
  surfaceMass_kg_m2: 7,
  thickness_m: 0.005,
  contactStiffness_N_m: 1e6,
} as const;

test.each([
  [['layers', 0, 'sheets', 1, 'material'], 'plywood', MATERIAL_SOURCES.sheet.plywood],
  [['layers', 1, 'fill'], 'glass-fibre', MATERIAL_SOURCES.fibre['glass-fibre']],
  [['covering'], 'carpet', MATERIAL_SOURCES.covering.carpet],
  [['layers', 1, 'fill'], 'felt', own.source],
  [['layers', 0, 'sheets', 1, 'material'], 'felt', undefined],
  [['layers', 1, 'fill'], 'none', undefined],
  [['layers', 1, 'support'], 'clips', undefined],
  [['covering'], 'rubber', rubber.source],
  [['layers', 1, 'fill'], 'rubber', undefined],
  [['covering'], 'constructor', undefined],
])('the source of %j = %s', (path, key, source) => {
  expect(materialSource({ ...smallNotebook(), materials: [own, rubber] }, path, key)).toBe(source);
});

test('a mat that has the values of a known one is called by its name, with its source', () => {
  const { key, name, ...values } = MAT_PRODUCTS[0]!;
  const mat: MatLayer = { kind: 'mat', id: 'mat', name: 'mat', ...values };
  expect(knownMat(mat)).toEqual({ name, source: MATERIAL_SOURCES.mat[key] });
  expect(knownMat({ ...mat, lossFactor: 0.3 })).toBeUndefined();
});
