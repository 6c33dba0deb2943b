import { expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { QUADRATURE, quadratureFor, SHARP_QUADRATURE } from '#src/acoustics/quadrature.ts';
import { cavity, fibre, leaf, mat, REFERENCE_CONSTRUCTIONS, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const chosen = (construction: Construction) => quadratureFor(floorModel(construction, MODEL_CONSTANTS));
const deck = sheet('plywood', 0.019);
const board = sheet('gypsum-board', 0.0127);
const hung = (...sheets: Parameters<typeof leaf>[0]) =>
  isolated(leaf([deck]), cavity({ support: 'clips', fill: [fibre('glass-fibre', 0.1)] }), leaf(sheets));

it('a sheet or a mat that loses little gets the finer quadrature by itself', () => {
  const sharp = { ...board, lossFactor: 0.002 };
  expect(chosen(hung(board))).toBe(QUADRATURE);
  expect(chosen(hung(sharp))).toBe(SHARP_QUADRATURE);
  expect(chosen(isolated(leaf([deck]), mat('mat', 0.01, 2e7, 0.002), leaf([board])))).toBe(SHARP_QUADRATURE);
  expect(predict(hung(sharp)).R_dB).toEqual(predict(hung(sharp), { quadrature: SHARP_QUADRATURE }).R_dB);
  expect(predict(hung(board)).R_dB).not.toEqual(predict(hung(board), { quadrature: SHARP_QUADRATURE }).R_dB);
});

it('one that is absent, and a screed whose edges lose more than its material, do not', () => {
  expect(chosen(hung(board, { ...board, thickness_m: 0, lossFactor: 0.002 }))).toBe(QUADRATURE);
  const screed = sheet('concrete', 0.05, { lossFactor: 0.002 });
  expect(chosen(isolated(leaf([screed]), mat('mat', 0.02, 1e7), leaf([deck])))).toBe(QUADRATURE);
});

it('what nobody builds, where peaks lie in places nobody foresaw, gets the finer one too', () => {
  expect(chosen(hung({ ...board, thickness_m: 0.0003 }))).toBe(SHARP_QUADRATURE);
  expect(chosen(hung({ ...board, density_kg_m3: 15_000 }))).toBe(SHARP_QUADRATURE);
  expect(chosen(isolated(leaf([deck]), mat('mat', 0.01, 1e5), leaf([board])))).toBe(SHARP_QUADRATURE);
  expect(chosen(isolated(leaf([deck]), cavity({ depth_m: 1.5 }), leaf([board])))).toBe(SHARP_QUADRATURE);
  expect(chosen(isolated(leaf([deck]), cavity({ joistSpacing_m: 8 }), leaf([board])))).toBe(SHARP_QUADRATURE);
});

it.each(Object.entries(REFERENCE_CONSTRUCTIONS))('measured construction %s does not need it', (_, construction) => {
  expect(chosen(construction)).toBe(QUADRATURE);
});
