import { describe, expect, test } from 'vitest';
import type { Construction, SupportKind } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { AIRBORNE_UNCERTAINTY } from '#src/acoustics/standards/iso-12999-1.ts';
import { modelResidual_dB } from '#src/acoustics/uncertainty.ts';
import { usualTolerance } from '#src/acoustics/usual-tolerances.ts';
import { extras, type StackExtras } from '../../src/commands/predict-extras.ts';
import { limp } from '../acoustics/fixtures.ts';
import { cavity, fibre, floor, leaf, sheet } from '../published/reference-constructions.ts';
import { runCommand } from './run-command.ts';

const STACK = 'demo-notebooks/one-stack.json';
const NAMES = ['deck', 'joists', 'ceiling'];

function onSupport(support: SupportKind, more: object = {}): Construction {
  return floor(
    leaf([sheet('plywood', 0.019)]),
    cavity({ support, fill: [fibre('glass-fibre', 0.1)], ...more }),
    leaf([sheet('gypsum-board', 0.0127)]),
  );
}

function numbersOf(
  given: Construction,
  layerNames = NAMES,
): Required<Pick<StackExtras, 'sensitivities' | 'uncertainty'>> {
  const { sensitivities, uncertainty } = extras(given, layerNames, predict(given), {
    sensitivities: true,
    uncertainty: true,
  });
  return { sensitivities: sensitivities!, uncertainty: uncertainty! };
}

test('numbers are named and placed, and those that a construction does not state are marked', () => {
  const covering = { name: 'felt', surfaceMass_kg_m2: 1, contactStiffness_N_m: 2e5, thickness_m: 0.005 };
  const given = { ...onSupport('clips', { supportLineSpacing_m: 0.5 }), covering };
  const { sensitivities, uncertainty } = numbersOf(given);
  const of = (path: string) => sensitivities.numbers.find((n) => n.path === path);
  expect(of('layers/1/supportLineSpacing_m')).toMatchObject({ value: 0.5, stated: true, of: 'joists' });
  expect(of('layers/1/supportStiffness_N_m')).toMatchObject({ stated: false, of: 'joists' });
  expect(of('layers/0/sheets/0/thickness_m')).toMatchObject({ value: 0.019, stated: true, of: 'plywood' });
  expect(of('layers/1/fill/0/flowResistivity_Pa_s_m2')?.of).toMatch(/glass/);
  expect(of('covering/contactStiffness_N_m')).toMatchObject({ value: 2e5, stated: true, of: 'felt' });
  expect(uncertainty.tolerances.contributions.map(({ path }) => path)).toEqual(
    sensitivities.numbers.map(({ path }) => path),
  );
});

describe('ten per cent more', () => {
  test('of the mass of a limp leaf is 20 lg 1.1 = 0.83 dB more by the mass law', () => {
    const { change, numbers } = numbersOf(floor(leaf([limp(40)])), ['leaf']).sensitivities;
    expect(change).toBe(0.1);
    const { dR_dB } = numbers.find(({ path }) => path === 'layers/0/sheets/0/density_kg_m3')!;
    // 200–2000 Hz, where the mass rules.
    for (const step of dR_dB!.slice(6, 17)) expect(Math.abs(step - 0.828)).toBeLessThan(0.05);
  });

  test('of the length of a gap that rules the floor is 10 lg 1.1 = 0.41 dB less, and nothing for footsteps', () => {
    const leaks = [{ name: 'gap at the wall', width_m: 0.005, length_m: 6, depth_m: 0.3 }];
    const { numbers } = numbersOf({ ...floor(leaf([sheet('concrete', 0.4)])), leaks }, ['slab']).sensitivities;
    const gap = numbers.filter(({ of }) => of === 'gap at the wall');
    expect(gap.map(({ path }) => path)).toEqual(['leaks/0/width_m', 'leaks/0/length_m', 'leaks/0/depth_m']);
    // Energy goes by the open area: that is geometry. The slit is longer than the waves of these bands, which it takes in
    // alike all along.
    for (const step of gap[1]!.dR_dB!.slice(6)) expect(Math.abs(step + 0.414)).toBeLessThan(0.05);
    for (const { dLn_dB } of gap) expect(Math.max(...dLn_dB!.map(Math.abs))).toBe(0);
  });

  test('is close to what a prediction with ten per cent more finds', () => {
    const given = onSupport('clips', { supportStiffness_N_m: 1e6 });
    const stiffer = predict(onSupport('clips', { supportStiffness_N_m: 1.1e6 }));
    const { R_dB } = predict(given);
    const { numbers } = numbersOf(given).sensitivities;
    const { dR_dB } = numbers.find(({ path }) => path === 'layers/1/supportStiffness_N_m')!;
    dR_dB!.forEach((step, i) => {
      expect(Math.abs(step - (stiffer.R_dB[i]! - R_dB[i]!))).toBeLessThan(0.15);
    });
  });

  test('of a number at the edge of what is accepted has no answer but a reason, and costs no other', () => {
    const edge = floor(leaf([{ ...sheet('gypsum-board', 0.0127), lossFactor: 2 }]));
    const { numbers } = numbersOf(edge, ['board']).sensitivities;
    expect(numbers.find(({ path }) => path.endsWith('lossFactor'))).toMatchObject({
      dR_dB: null,
      dLn_dB: null,
      reason: expect.stringMatching(/^lossFactor must be /),
    });
    expect(numbers.find(({ path }) => path.endsWith('thickness_m'))!.dR_dB).toHaveLength(21);
  });
});

describe('uncertainty', () => {
  const given = onSupport('resilient-channel');
  const { bands_Hz } = predict(given);
  const { R, betweenLaboratories, tolerances } = numbersOf(given).uncertainty;

  test('of R is ISO 12999-1, situation A, and the residual of the octave, as independent', () => {
    const sigma = new Map(AIRBORNE_UNCERTAINTY.A);
    expect(R.standard_dB[10]! ** 2).toBeCloseTo(sigma.get(500)! ** 2 + modelResidual_dB(500) ** 2, 12);
    expect(R.expanded_dB[10]).toBe(1.96 * R.standard_dB[10]!);
  });

  test('of single numbers between laboratories is that of ISO 12999-1, situation A (from memory): Rw 1.2, Ln,w 1.5 dB', () => {
    expect(betweenLaboratories).toEqual({ Rw: 1.2, Lnw: 1.5 });
  });

  test('by tolerances is the root of the sum of squares of what each does', () => {
    bands_Hz.forEach((_, i) => {
      const squares = tolerances.contributions.reduce((sum, { R_dB }) => sum + R_dB![i]! ** 2, 0);
      expect(tolerances.R_dB[i]).toBeCloseTo(Math.sqrt(squares), 12);
    });
    expect(tolerances.basis).toBe('assumed, no source');
  });

  test('each is that of a range which is not left: half its width over √3 (ISO/IEC Guide 98-3:2008, 4.3.7)', () => {
    for (const { path, value, standardUncertainty } of tolerances.contributions) {
      const halfWidth = usualTolerance(path.split('/').at(-1)!) * value;
      expect(standardUncertainty, path).toBeCloseTo(halfWidth / Math.sqrt(3), 9);
    }
    expect(tolerances.contributions.map(({ path }) => path)).toContain('layers/1/supportStiffness_N_m');
  });

  test('± 5 % of the density of a limp leaf is 20 lg e · 0.05/√3 = 0.25 dB by the mass law', () => {
    const { contributions } = numbersOf(floor(leaf([limp(40)])), ['leaf']).uncertainty.tolerances;
    const { R_dB } = contributions.find(({ path }) => path.endsWith('density_kg_m3'))!;
    for (const step of R_dB!.slice(6, 17)) expect(Math.abs(step - 0.2507)).toBeLessThan(0.03);
  });

  test('counts a number at the edge of what is accepted as certain, and says why', () => {
    const edge = floor(leaf([{ ...sheet('gypsum-board', 0.0127), lossFactor: 2 }]));
    const { contributions, R_dB } = numbersOf(edge, ['board']).uncertainty.tolerances;
    expect(contributions.find(({ path }) => path.endsWith('lossFactor'))).toMatchObject({
      standardUncertainty: null,
      R_dB: null,
      reason: expect.stringMatching(/^lossFactor must be /),
    });
    expect(R_dB.every(Number.isFinite)).toBe(true);
  });
});

describe('npm run predict --sensitivities --uncertainty', { timeout: 60_000 }, () => {
  const run = (...args: string[]) => runCommand('predict', args).out;

  test('--json has them per number and band, below 50 Hz without what ISO 12999-1 does not reach', () => {
    const [stack] = JSON.parse(run('--stack', STACK, '--json', '--from', '40', '--sensitivities', '--uncertainty'))
      .scenarios[0].stacks;
    expect(stack.bands_Hz).toHaveLength(22);
    for (const number of stack.sensitivities.numbers) {
      expect([number.dR_dB.length, number.dLn_dB.length]).toEqual([22, 22]);
    }
    expect(stack.uncertainty.R.standard_dB[0]).toBeNull();
    expect(stack.uncertainty.R.standard_dB[1]).toBeGreaterThan(0);
    expect(stack.uncertainty.tolerances.R_dB[0]).toBeGreaterThan(0);
  });

  test('without the options neither is there', () => {
    const [stack] = JSON.parse(run('--stack', STACK, '--json')).scenarios[0].stacks;
    expect(stack).not.toHaveProperty('sensitivities');
    expect(stack).not.toHaveProperty('uncertainty');
  });

  test('the CSV has a column for every number that any stack has', () => {
    const notebook = 'demo-notebooks/practice-room-above-library.slabspring.json';
    const [head = '', ...lines] = run(notebook, '--csv', '--sensitivities').trimEnd().split('\r\n');
    const columns = head.split(',');
    const slab = columns.indexOf('layers/0/sheets/0/thickness_m');
    expect(columns.slice(slab, slab + 3)).toEqual([
      'layers/0/sheets/0/thickness_m',
      'dR_dB layers/0/sheets/0/thickness_m +10 %',
      'dLn_dB layers/0/sheets/0/thickness_m +10 %',
    ]);
    // The slab of the existing floor is 0 mm thick: there is no tenth of it.
    const [existing, slabOnTop] = [lines[0]!, lines[21]!].map((line) => line.split(',').slice(slab, slab + 2));
    expect(existing).toEqual(['', '']);
    expect(slabOnTop![0]).toBe('0.038');
    expect(new Set(lines.map((line) => line.split(',').length))).toEqual(new Set([columns.length]));
  });

  test('the tables say what is assumed', () => {
    const out = run('--stack', STACK, '--sensitivities', '--uncertainty');
    expect(out).toContain('By tolerances: of the numbers below, assumed, no source.');
    expect(out).toMatch(/^layers\/1\/supportStiffness_N_m \(joists\) .*usual value, not stated$/m);
  });
});
