import { describe, expect, test } from 'vitest';
import type { Construction, Mat } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { type SimpleModelKey, simpleModels } from '../../src/commands/predict-simple.ts';
import { cavity, floor, leaf, sheet } from '../published/reference-constructions.ts';
import { runCommand } from './run-command.ts';

function simpleOf(construction: Construction) {
  const prediction = predict(construction);
  const models = simpleModels(construction, prediction);
  const at = (key: SimpleModelKey, band_Hz: number) =>
    models.find((m) => m.key === key)!.values_dB![prediction.bands_Hz.indexOf(band_Hz)]!;
  return { models, at, of: (key: SimpleModelKey) => models.find((m) => m.key === key)! };
}

const slab = leaf([sheet('concrete', 0.15)]);
const deck = leaf([sheet('plywood', 0.019)]);
const board = leaf([sheet('gypsum-board', 0.0127)]);
const mat: Mat = { kind: 'mat', name: 'mat', thickness_m: 0.02, dynamicStiffness_N_m3: 10e6, lossFactor: 0.1 };

describe('textbook rules beside a prediction', () => {
  test('a bare slab has the rules for slabs, and no others but the panels', () => {
    const { models, of } = simpleOf(floor(slab));
    expect(models.filter(({ values_dB }) => values_dB).map(({ key }) => key)).toEqual([
      'massLaw',
      'sewell',
      'bareSlab',
    ]);
    const { surfaceMass_kg_m2: m = 0, Rw, Lnw } = of('bareSlab').numbers!;
    // EN 12354-1:2000, Annex B (from memory) and EN 12354-2:2000, clause 4.3.
    expect(Rw).toBeCloseTo(37.5 * Math.log10(m) - 42, 9);
    expect(Lnw).toBeCloseTo(164 - 35 * Math.log10(m), 9);
    expect(of('doubleLeaf').reason).toBe(
      'it is made for two leaves with a cavity between, and this floor has one leaf',
    );
    expect(of('floating').reason).toBe('it is made for an uppermost leaf that lies on a mat, and this one does not');
  });

  test('a limp rule by hand: at 500 Hz a leaf of 8.89 kg/m² has R0 − 5 = 25.6 dB from all angles up to 78°', () => {
    const { at, of } = simpleOf(floor(board));
    expect(of('massLaw').numbers).toEqual({ surfaceMass_kg_m2: expect.closeTo(8.89, 2) });
    const R0_dB = 20 * Math.log10((Math.PI * 500 * 8.89) / (1.204 * 343.2));
    expect(Math.abs(at('massLaw', 500) - (R0_dB - 5))).toBeLessThan(0.3);
    // From its critical frequency up a panel of Sewell's has no value.
    expect(at('sewell', 4000)).toBeNaN();
  });

  test('two leaves apart: R1 + R2 + 6 above c/2πd (Sharp 1978), without a bridge', () => {
    const { at, of } = simpleOf(floor(deck, cavity({ support: 'clips' }), board));
    const { upperMass_kg_m2, lowerMass_kg_m2, limit_Hz, depth_m } = of('doubleLeaf').numbers!;
    expect(limit_Hz).toBeCloseTo(343.2 / (2 * Math.PI * depth_m!), 9);
    const [upper, lower] = [upperMass_kg_m2!, lowerMass_kg_m2!].map(
      (m) => 20 * Math.log10((Math.PI * 2000 * m) / (1.204 * 343.2)) - 5,
    );
    expect(Math.abs(at('doubleLeaf', 2000) - (upper! + lower! + 6))).toBeLessThan(0.6);
  });

  test('a screed on a mat takes off 30 lg(f/f0), f0 = √(s/m)/2π (EN 12354-2:2000, Annex C); boards on one 40 lg', () => {
    const screed = simpleOf(floor(leaf([sheet('concrete', 0.05)]), mat, slab));
    const { resonance_Hz: f0 = 0, surfaceMass_kg_m2: m = 0 } = screed.of('floating').numbers!;
    expect(f0).toBeCloseTo(Math.sqrt(10e6 / m) / (2 * Math.PI), 9);
    expect(screed.at('floating', 1000)).toBeCloseTo(30 * Math.log10(1000 / f0), 9);
    expect(screed.of('doubleLeaf').reason).toBe(
      'it is made for two leaves with a cavity between, and this floor has a mat between',
    );
    const dry = simpleOf(floor(deck, mat, slab));
    expect(dry.at('floating', 1000)).toBeCloseTo(40 * Math.log10(1000 / dry.of('floating').numbers!.resonance_Hz!), 9);
  });

  test('a covering takes off 40 lg(f/f0) with the hammer of 0.5 kg on its stiffness', () => {
    const covering = { name: 'felt', surfaceMass_kg_m2: 1, contactStiffness_N_m: 2e5, thickness_m: 0.005 };
    const { at, of } = simpleOf({ ...floor(slab), covering });
    expect(at('covering', 1000)).toBeCloseTo(40 * Math.log10(1000 / (Math.sqrt(2e5 / 0.5) / (2 * Math.PI))), 9);
    expect(of('bareSlab').values_dB).toBeNull();
  });
});

test('npm run predict --simple shows them in table, JSON and CSV', { timeout: 60_000 }, () => {
  const run = (...args: string[]) =>
    runCommand('predict', ['--stack', 'demo-notebooks/one-stack.json', '--simple', ...args]).out;
  const table = run();
  expect(table).toMatch(/^Hz +R +Ln +mass law +Sewell +double leaf$/m);
  expect(table).toContain('ΔL floating: it is made for an uppermost leaf that lies on a mat, and this one does not.');
  const { simple } = JSON.parse(run('--json')).scenarios[0].stacks[0];
  expect(simple.map((m: { values_dB: unknown }) => m.values_dB === null)).toEqual([
    false,
    false,
    false,
    true,
    true,
    true,
  ]);
  expect(run('--csv').split('\r\n')[0]).toMatch(
    /simple_massLaw_dB,simple_sewell_dB,simple_doubleLeaf_dB,simple_floating_dB,simple_covering_dB,simple_bareSlab_dB$/,
  );
});
