import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { laidImprovement } from '#src/acoustics/laid-improvement.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Stack } from '#src/notebook/types.ts';
import { splitCells } from '#src/quantities/split-cells.ts';
import type { NotebookPrediction } from '../../src/commands/predict-notebook.ts';
import { practiceRoom } from '../browser/practice-room.ts';
import { MAT, SLAB } from '../notebook/floating-layers.ts';
import { runCommand } from './run-command.ts';

const bare = JSON.parse(readFileSync('demo-notebooks/one-stack.json', 'utf8')) as Stack;
const laid: Stack = { ...bare, name: 'Floating', covering: 'carpet', layers: [SLAB, MAT, ...bare.layers] };
const run = (stack: Stack, ...args: string[]) =>
  runCommand('predict', ['--stack', '-', ...args], JSON.stringify(stack)).out;
const stackOf = (out: string) => (JSON.parse(out) as NotebookPrediction).scenarios[0]!.stacks[0]!;

describe('npm run predict says what lies on the floor', { timeout: 60_000 }, () => {
  test('as JSON: the improvement on the standard slab, and none where nothing lies on it', () => {
    const room = practiceRoom();
    const construction = resolveStack({ ...room, stacks: [laid] }, 'base', laid.id);
    expect(stackOf(run(laid, '--json')).improvement).toEqual(laidImprovement(construction));
    expect(stackOf(run(bare, '--json'))).not.toHaveProperty('improvement');
  });

  test('in the table: ratings and ΔL of every floor that has it', () => {
    const table = run(laid);
    expect(table).toContain(
      'What lies on the floor, by itself on a bare concrete slab of 140 mm (drop of its impact level):',
    );
    expect(table).toMatch(/^ +ΔLw\(CI,Δ\) +ΔLlin +ΔIIC +f0, Hz\n1 Floating +\d\d\(−\d+\) +\d+ +\d+ +\d+\nHz +ΔL 1$/m);
    expect(run(bare)).not.toContain('ΔLw');
  });

  test('as CSV: columns that stay empty where nothing lies on the floor', () => {
    const cellsOf = (out: string) => {
      const [head, first] = splitCells(out).rows.map(({ cells }) => cells);
      return ['dL_slab_dB', 'dLw', 'CIdelta', 'dLlin', 'dIIC'].map((name) => first![head!.indexOf(name)]);
    };
    const { improvement } = stackOf(run(laid, '--json'));
    const { dL_dB, dLw, CIdelta, dLlin, dIIC } = improvement!;
    expect(cellsOf(run(laid, '--csv')).map(Number)).toEqual([dL_dB[0], dLw, CIdelta, dLlin, dIIC]);
    expect(cellsOf(run(bare, '--csv'))).toEqual(['', '', '', '', '']);
  });
});
