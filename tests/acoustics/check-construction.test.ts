import { expect, it } from 'vitest';
import type { Construction, FlankingWall } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, floor, leaf, mat, sheet } from '../published/reference-constructions.ts';

const board = sheet('gypsum-board', 0.0127, { name: 'board' });
const ok = floor(leaf([board]), cavity(), leaf([board]));

const wall: FlankingWall = {
  name: 'masonry',
  junctionLength_m: 4,
  height_m: 2.5,
  surfaceMass_kg_m2: 400,
  reduction: { kind: 'rated', Rw_dB: 55 },
  junction: { kind: 'tee' },
};

const wrong: [string, Construction][] = [
  ['thickness_m must be >= 0, got -0.012 (layer 1, "board")', floor(leaf([{ ...board, thickness_m: -0.012 }]))],
  [
    'thickness_m must be finite, got NaN (layer 3, "board")',
    { ...ok, layers: [...ok.layers.slice(0, 2), leaf([{ ...board, thickness_m: NaN }])] },
  ],
  ['lossFactor must be >= 0.0001, got 0.00001 (layer 1, "board")', floor(leaf([{ ...board, lossFactor: 1e-5 }]))],
  [
    'youngsModulus_Pa must be <= 1300000000000, got 8000000000000 (layer 1, "board")',
    floor(leaf([{ ...board, youngsModulus_Pa: 8e12 }])),
  ],
  ['poissonRatio must be <= 0.49, got 0.5 (layer 1, "board")', floor(leaf([{ ...board, poissonRatio: 0.5 }]))],
  ['depth_m must be >= 0, got -1 (layer 2, cavity)', floor(leaf([board]), cavity({ depth_m: -1 }), leaf([board]))],
  ['depth_m must be <= 2, got 2.1 (layer 2, cavity)', floor(leaf([board]), cavity({ depth_m: 2.1 }), leaf([board]))],
  [
    'depth_m with the height of the support must be <= 2.5, got 2.6 (layer 2, cavity)',
    floor(leaf([board]), cavity({ depth_m: 1.6, supportHeight_m: 1 }), leaf([board])),
  ],
  ['thickness_m must be <= 2, got 2.1 (layer 1, "board")', floor(leaf([{ ...board, thickness_m: 2.1 }]))],
  [
    'dynamicStiffness_N_m3 must be > 0, got 0 (layer 2, "felt")',
    floor(leaf([board]), mat('felt', 0.01, 0), leaf([board])),
  ],
  ['length_m must be > 0, got 0 (floor)', { ...ok, length_m: 0 }],
  ['layers must begin and end with a leaf, got 2 layers (floor)', { ...ok, layers: ok.layers.slice(0, 2) }],
  [
    'layers must alternate: a mat or cavity was expected, got "leaf" (layer 2)',
    { ...ok, layers: [leaf([board]), leaf([board]), leaf([board])] },
  ],
  ['layers must hold a sheet thicker than 0, got none (floor)', floor(leaf([]))],
];

it.each(wrong)('refuses with: %s', (message, construction) => {
  expect(() => predict(construction)).toThrow(new RangeError(message));
});

const misspelt: [string, Construction][] = [
  [
    'contact must be loose, bonded or damped, got "glue" (layer 1)',
    floor({ ...leaf([board]), contact: 'glue' as never }),
  ],
  [
    'form must be slab or board, got undefined (layer 1, "board")',
    floor(leaf([{ ...board, form: undefined as never }])),
  ],
  [
    'joists must be none, solid-timber, i-joist, open-truss or cold-formed-steel, got "i-joists" (layer 2, cavity)',
    floor(leaf([board]), cavity({ joists: 'i-joists' as never }), leaf([board])),
  ],
  [
    'support must be direct, resilient-channel, clips, hangers or separate-joists, got "clip" (layer 2, cavity)',
    floor(leaf([board]), cavity({ support: 'clip' as never }), leaf([board])),
  ],
  [
    'junction must be cross, tee, light-facade, joists or measured, got "corner" (wall "masonry")',
    { ...ok, flanking: { walls: [{ ...wall, junction: { kind: 'corner' as never } }] } },
  ],
  [
    'reduction must be rated or homogeneous, got "Rw" (wall "masonry")',
    { ...ok, flanking: { walls: [{ ...wall, reduction: { kind: 'Rw' as never, Rw_dB: 50 } }] } },
  ],
];

it.each(misspelt)('names what a word may be: %s', (message, construction) => {
  expect(() => predict(construction)).toThrow(new RangeError(message));
});

it('calls a wrong kind a TypeError', () => {
  const text = { ...board, thickness_m: '12' as unknown as number };
  expect(() => predict(floor(leaf([text])))).toThrow(
    new TypeError('thickness_m must be a number, got "12" (layer 1, "board")'),
  );
});
