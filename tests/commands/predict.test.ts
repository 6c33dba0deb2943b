import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { CHECKED_RANGES } from '#src/acoustics/checked-range.ts';
import { predict } from '#src/acoustics/predict.ts';
import { readNotebook } from '#src/notebook/read-file.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import { splitCells } from '#src/quantities/split-cells.ts';
import { runCommand } from './run-command.ts';

const DEMO = 'demo-notebooks/practice-room-above-library.slabspring.json';
const STACK = 'demo-notebooks/one-stack.json';
const demoText = readFileSync(new URL(`../../${DEMO}`, import.meta.url), 'utf8');
const stackText = readFileSync(new URL(`../../${STACK}`, import.meta.url), 'utf8');

const run = (args: readonly string[], input?: string) => runCommand('predict', args, input);

interface Printed {
  readonly notebook: string;
  readonly engine: string;
  readonly scenarios: readonly { readonly name: string; readonly stacks: readonly Record<string, unknown>[] }[];
}

describe('npm run predict', { timeout: 60_000 }, () => {
  test('--json prints every scenario with finite bands and ratings, and nothing else', () => {
    const { code, out, err } = run([DEMO, '--json']);
    expect([code, err]).toEqual([0, '']);
    const printed = JSON.parse(out) as Printed;
    expect(Object.keys(printed)).toEqual(['notebook', 'engine', 'scenarios']);
    expect(printed.engine).toMatch(/^slab-and-spring \d/);
    expect(printed.scenarios.map((s) => s.name)).toEqual([
      'Existing floor',
      'Slab on top',
      'Ceiling on resilient channel',
      'Both',
    ]);
    for (const { stacks } of printed.scenarios)
      for (const stack of stacks) {
        expect(Object.keys(stack)).toEqual([
          'name',
          'bands_Hz',
          'R_dB',
          'paths_dB',
          'Ln_dB',
          'impactPaths_dB',
          'ratings',
          'surfaceMass_kg_m2',
          'height_m',
          'resonances_Hz',
          'criticalFrequencies_Hz',
          'mechanisms',
          'impactMechanisms',
          'wallsCounted',
          'ratingNames',
          'outsideChecked',
        ]);
        const numbers = [stack.R_dB, stack.Ln_dB, Object.values(stack.ratings as object)].flat() as number[];
        expect(numbers).toHaveLength(21 + 21 + 15);
        for (const number of numbers) expect(number).toEqual(expect.any(Number));
      }
  });

  test('the numbers are those of the engine for the resolved stacks, to the last digit', () => {
    const { scenarios } = JSON.parse(run([DEMO, '--json']).out) as Printed;
    const reading = readNotebook(demoText);
    if (!reading.ok) throw new Error('the demo must be readable');
    reading.notebook.scenarios.forEach(({ id }, i) => {
      const prediction = predict(resolveStack(reading.notebook, id, 'floor'));
      const [{ wallsCounted: _, ratingNames: __, ...stack }] = scenarios[i]!.stacks as [Record<string, unknown>];
      expect(stack).toEqual({ name: 'Floor between the rooms', ...prediction, outsideChecked: [] });
    });
  });

  test('--stack reads a single stack without flanking; a file of a notebook is not one', () => {
    const { code, out } = run(['--stack', STACK, '--json']);
    const printed = JSON.parse(out) as Printed;
    expect(code).toBe(0);
    expect(printed.scenarios).toHaveLength(1);
    expect(Object.keys(printed.scenarios[0]!.stacks[0]!.paths_dB as object)).toEqual(['direct', 'supports']);
    expect(run(['--stack', DEMO]).code).toBe(1);
  });

  test('what lies outside of what was checked is named, with limits and reason, and predicted all the same', () => {
    const stack = JSON.parse(stackText) as { layers: Record<string, unknown>[] };
    const joists = stack.layers.find((layer) => layer.kind === 'cavity')!;
    Object.assign(joists, { depth_m: 2 });
    const deep = JSON.stringify(stack);
    const remark = 'joists 2000 mm deep (checked 63.5 to 457 mm)';
    const { code, out, err } = runCommand('predict', ['--stack', '-', '--json'], deep);
    expect([code, err]).toEqual([0, '']);
    expect((JSON.parse(out) as Printed).scenarios[0]!.stacks[0]!.outsideChecked).toEqual([
      { text: remark, reason: CHECKED_RANGES.joistDepth_m.reason },
    ]);
    const table = runCommand('predict', ['--stack', '-'], deep).out;
    expect(table).toContain(
      `Outside what was checked (ACCURACY.md):\n  Slab on plywood over joists, ceiling on resilient channel: ${remark}\n`,
    );
    expect(run(['--stack', STACK]).out).not.toContain('Outside what was checked');
    const column = (csv: string) => {
      const [head, ...rows] = splitCells(csv).rows.map(({ cells }) => cells);
      expect(new Set(rows.map((row) => row.length))).toEqual(new Set([head!.length]));
      return rows.map((row) => row[head!.indexOf('outside_checked')]);
    };
    expect(column(runCommand('predict', ['--stack', '-', '--csv'], deep).out)).toEqual(Array(21).fill(remark));
    expect(column(run(['--stack', STACK, '--csv']).out)).toEqual(Array(21).fill(''));
  });

  test('--csv prints one line for each scenario, stack and band', () => {
    const { code, out } = run([DEMO, '--csv']);
    const lines = out.trimEnd().split(/\r?\n/);
    expect(code).toBe(0);
    expect(lines[0]).toMatch(
      /^scenario,stack,frequency_Hz,R_dB,R_direct_dB,R_supports_dB,R_flanking_dB,R_leaks_dB,Ln_dB/,
    );
    expect(lines).toHaveLength(1 + 4 * 21);
    expect(lines[1]).toMatch(/^Existing floor,Floor between the rooms,50,\d/);
  });

  test('what rules each band stands in the table and in the CSV, as the engine says', () => {
    interface Rule {
      path: string;
      share: number;
      mechanism: string;
      frequency_Hz?: number;
      effect_dB?: number;
    }
    const { mechanisms, impactMechanisms } = (JSON.parse(run(['--stack', STACK, '--json']).out) as Printed)
      .scenarios[0]!.stacks[0] as { mechanisms: Rule[]; impactMechanisms: Rule[] };
    const cells = ({ path, share, mechanism, frequency_Hz, effect_dB }: Rule) =>
      [path, share, mechanism, frequency_Hz, effect_dB].join(',');
    const [head, ...lines] = run(['--stack', STACK, '--csv']).out.trimEnd().split('\r\n');
    expect(head).toMatch(
      /,path,path_share,mechanism,mechanism_Hz,mechanism_dB,impact_path,impact_path_share,impact_mechanism,impact_mechanism_Hz,impact_mechanism_dB$/,
    );
    lines.forEach((line, i) => {
      expect(line.endsWith(`,${cells(mechanisms[i]!)},${cells(impactMechanisms[i]!)}`)).toBe(true);
    });
    const table = run(['--stack', STACK]).out;
    expect(table).toMatch(/^63 .*direct \d+ %: mass-spring-mass, \d+ Hz, \d dB lower +supports \d+ %$/m);
    expect(table).toMatch(/^100 .*direct \d+ %: double-leaf, \d+ Hz +supports \d+ %$/m);
    expect(table).toMatch(/^5000 .*supports \d+ % +supports \d+ %$/m);
  });

  test('prints tables with the cautions when nothing is asked for', () => {
    const { code, out } = run([DEMO]);
    expect(code).toBe(0);
    expect(out).toMatch(/ASTC +OITC with walls +R′w\(C;Ctr\) +IIC +Ln,w\(CI\)/);
    expect(out).toMatch(/structural engineer/);
  });

  test('names every problem of a file on standard error, exits with 1 and prints nothing', () => {
    const broken = demoText
      .replace('"parameter": "slab-thickness"', '"parameter": "nowhere"')
      .replace('"units": "SI"', '"units": 3');
    const { code, out, err } = run(['-', '--json'], broken);
    expect([code, out]).toEqual([1, '']);
    expect(err.trimEnd().split('\n')).toEqual([
      'standard input: units must be "SI" or "inch-pound", got 3 (/units)',
      `standard input: Stack “Floor between the rooms”, layer “deck”, sheet 1 (cellular-concrete): the parameter for thickness must be the key of one of the notebook's parameters, got "nowhere" (/stacks/0/layers/0/sheets/0/thickness_m/parameter)`,
    ]);
  });

  test('names every problem of a stack with paths that begin at the stack', () => {
    const broken = stackText
      .replace('"covering": "none"', '"covering": "moss"')
      .replace('"length_m": 4', '"length_m": { "parameter": "side" }')
      .replace('"kind": "cavity"', '"kind": "leaf"');
    const { code, err } = run(['--stack', '-'], broken);
    expect(code).toBe(1);
    expect(err).toContain('length in m must be a number, got an object (/length_m)');
    expect(err).toContain('covering must be a known covering, got "moss" (/covering)');
    expect(err).toContain('(/layers/1/kind)');
  });

  test('a stack with nothing in it cannot be computed and says so', () => {
    const empty = stackText.replaceAll(/"thickness_m": [\d.]+/g, '"thickness_m": 0');
    const { code, out, err } = run(['--stack', '-', '--json'], empty);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/cannot be computed: layers must hold a sheet thicker than 0/);
  });

  test.each([
    [['no-such-file.json'], 1],
    [['demo-notebooks'], 1],
    [[], 2],
    [[DEMO, STACK], 2],
    [[DEMO, '--json', '--csv'], 2],
    [[DEMO, '--xml'], 2],
    [[DEMO, '--source', STACK], 2],
    [[DEMO, '--room', '50', '--background', STACK], 2],
    [['-', '--room', '50', '--source', '-'], 2],
    [[DEMO, '--room', '-50', '--source', STACK], 2],
    [[DEMO, '--room', '50', '--source', 'no-such-file.csv'], 1],
    [[DEMO, '--room', '50', '--source', 'demo-notebooks'], 1],
  ])('%j ends with exit code %d and a word on standard error', (args, code) => {
    const result = run(args);
    expect([result.code, result.out]).toEqual([code, '']);
    expect(result.err).not.toBe('');
  });

  test('--help prints the usage', () => {
    expect(run(['--help'])).toMatchObject({ code: 0, out: expect.stringContaining('Usage:') });
  });

  test('--from 20 adds the bands down to 20 Hz, leaves the others as they are, and says where a room has few modes', () => {
    const low = JSON.parse(run(['--stack', STACK, '--json', '--from', '20']).out) as Printed;
    const usual = JSON.parse(run(['--stack', STACK, '--json']).out) as Printed;
    const [wide, narrow] = [low, usual].map((p) => p.scenarios[0]!.stacks[0] as { bands_Hz: number[]; R_dB: number[] });
    expect(wide!.bands_Hz.slice(0, 4)).toEqual([20, 25, 31.5, 40]);
    expect(wide!.R_dB.slice(4)).toEqual(narrow!.R_dB);
    expect(wide!.R_dB.every(Number.isFinite)).toBe(true);
    expect(run(['--stack', STACK, '--from', '20']).out).toMatch(
      /Below 160 Hz a room of 4 × 2\.5 × 2\.5 m \(sides assumed\)/,
    );
    expect(run(['--stack', STACK, '--from', '30'])).toMatchObject({ code: 2, out: '' });
  });
});
