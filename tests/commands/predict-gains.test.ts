import { describe, expect, test } from 'vitest';
import type { NotebookPrediction } from '../../src/commands/predict-notebook.ts';
import { runCommand } from './run-command.ts';

const DEMO = 'demo-notebooks/practice-room-above-library.slabspring.json';
const run = (...args: string[]) => runCommand('predict', args);

describe('npm run predict --gains', { timeout: 60_000 }, () => {
  test('every scenario but the reference has its gains over it, band by band and in single numbers', () => {
    const { scenarios } = JSON.parse(run(DEMO, '--json', '--gains').out) as NotebookPrediction;
    const [reference, ...others] = scenarios.map(({ stacks }) => stacks[0]!);
    expect(reference).not.toHaveProperty('gain');
    for (const { gain, R_dB, Ln_dB, ratings, surfaceMass_kg_m2 } of others) {
      expect(gain!.over).toBe('Existing floor');
      gain!.R_dB.forEach((gained, i) => {
        expect(gained).toBeCloseTo(R_dB[i]! - reference!.R_dB[i]!, 12);
        expect(gain!.Ln_dB[i]).toBeCloseTo(reference!.Ln_dB[i]! - Ln_dB[i]!, 12);
      });
      expect(gain!.STC).toBe(ratings.STC - reference!.ratings.STC);
      expect(gain!.Lnw).toBe(reference!.ratings.Lnw - ratings.Lnw);
      expect(gain!.addedMass_kg_m2).toBeCloseTo(surfaceMass_kg_m2 - reference!.surfaceMass_kg_m2, 12);
    }
  });

  test('own case by hand: the slab adds 38 mm of 1760 kg/m³, 66.88 kg/m²', () => {
    const { scenarios } = JSON.parse(run(DEMO, '--json', '--gains').out) as NotebookPrediction;
    const { gain } = scenarios.find(({ name }) => name === 'Slab on top')!.stacks[0]!;
    expect(gain!.addedMass_kg_m2).toBeCloseTo(66.88, 9);
    expect(gain!.addedHeight_m).toBeCloseTo(0.038, 12);
  });

  test('the table sets the scenarios side by side, the CSV leaves the reference empty', () => {
    const table = run(DEMO, '--gains').out;
    expect(table).toContain('Gains over "Existing floor" (Ln: drop of the impact level):');
    expect(table).toMatch(/^1 Slab on top: .* \+66\.9 +\+38$/m);
    expect(table).toMatch(/^Hz +R 1 +Ln 1 +R 2 +Ln 2 +R 3 +Ln 3$/m);
    const [head, first] = run(DEMO, '--gains', '--csv').out.split('\r\n');
    expect(head).toMatch(/,R_gain_dB,Ln_gain_dB$/);
    expect(first).toMatch(/,,$/);
  });

  test('a stack alone has nothing to gain over, and that is said', () => {
    expect(run('--stack', 'demo-notebooks/one-stack.json', '--gains')).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining('Expected a notebook with --gains, got --stack'),
    });
  });
});
