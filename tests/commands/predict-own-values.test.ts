import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { StackPrediction } from '../../src/commands/predict-notebook.ts';
import { root, runCommand } from './run-command.ts';

const read = (file: string) => JSON.parse(readFileSync(`${root}/demo-notebooks/${file}`, 'utf8'));
const stack = read('one-stack.json');
const notebook = read('practice-room-above-library.slabspring.json');

function predicted(input: object, ...args: string[]): StackPrediction {
  const { out, err } = runCommand('predict', [...args, '-', '--json'], JSON.stringify(input));
  expect(err).toBe('');
  return JSON.parse(out).scenarios[0].stacks[0];
}

/** The example stack with other values in its cavity. */
function withCavity(values: object): object {
  const [deck, cavity, ceiling] = stack.layers;
  return { ...stack, layers: [deck, { ...cavity, ...values }, ceiling] };
}

const bounce_Hz = ({ resonances_Hz }: StackPrediction) =>
  resonances_Hz.find(({ kind }) => kind === 'mass-spring-mass')!.frequency_Hz;

describe('what a stack file states of its supports', { timeout: 60_000 }, () => {
  test('the stiffness of a support is used: softer ones let less through', () => {
    const [soft, stiff] = [1e5, 8e5].map((supportStiffness_N_m) =>
      predicted(withCavity({ support: 'clips', supportStiffness_N_m }), '--stack'),
    );
    const at1000 = soft!.bands_Hz.indexOf(1000);
    expect(stiff!.mechanisms[at1000]!.path).toBe('supports');
    expect(soft!.paths_dB.supports![at1000]! - stiff!.paths_dB.supports![at1000]!).toBeGreaterThan(10);
    expect(bounce_Hz(soft!)).toBeLessThan(bounce_Hz(stiff!));
  });

  test('own case by hand: hangers of 20 Hz under 11.13 kg/m² are 176 kN/m³, so 17.6 kN/m for each of ten a m²', () => {
    // (2π · 20)² · 11.13 = 175 758 N/m³; spaced 0.4 × 0.25 m, each carries 0.1 m².
    const spacing = { support: 'hangers', supportLineSpacing_m: 0.4, supportPointSpacing_m: 0.25 };
    const byFrequency = predicted(withCavity({ ...spacing, hangerFrequency_Hz: 20 }), '--stack');
    const byStiffness = predicted(withCavity({ ...spacing, supportStiffness_N_m: 17576 }), '--stack');
    byFrequency.R_dB.forEach((R, i) => {
      expect(Math.abs(R - byStiffness.R_dB[i]!)).toBeLessThan(0.01);
    });
    const harder = predicted(withCavity({ ...spacing, hangerFrequency_Hz: 40 }), '--stack');
    expect(bounce_Hz(harder)).toBeGreaterThan(bounce_Hz(byFrequency) + 1);
  });
});

test('own case by hand: a second fill of 50 mm at 40 kg/m³ adds 2 kg/m², and lets less through', {
  timeout: 60_000,
}, () => {
  const one = predicted(stack, '--stack');
  const two = predicted(withCavity({ fillsAbove: [{ fill: 'mineral-wool', fillThickness_m: 0.05 }] }), '--stack');
  expect(two.surfaceMass_kg_m2 - one.surfaceMass_kg_m2).toBeCloseTo(2, 9);
  const at500 = one.bands_Hz.indexOf(500);
  expect(two.paths_dB.direct![at500]!).toBeGreaterThan(one.paths_dB.direct![at500]! + 1);
});

describe('materials of a notebook’s own', { timeout: 60_000 }, () => {
  const own = {
    kind: 'sheet',
    key: 'rammed-earth',
    name: 'rammed earth (invented)',
    source: 'invented for this test',
    form: 'slab',
    density_kg_m3: 2000,
    youngsModulus_Pa: 1e9,
    poissonRatio: 0.2,
    lossFactor: 0.02,
  };
  const alone = {
    ...notebook,
    parameters: [],
    cells: [],
    materials: [own],
    flanking: { kind: 'none', R500_dB: 0, slope_dB_per_octave: 0 },
    scenarios: [{ id: 'base', name: 'Base', mark: 0, parent: null, changes: {} }],
    shown: ['base'],
    reference: 'base',
    active: 'base',
    stacks: [
      {
        ...stack,
        layers: [
          {
            kind: 'leaf',
            id: 'earth',
            name: 'earth',
            contact: 'loose',
            sheets: [{ material: own.key, thickness_m: 0.1 }],
          },
        ],
      },
    ],
  };

  test('own case by hand: 100 mm of 2000 kg/m³ weigh 200 kg/m² and have fc = c²/2π √(m/B) = 899.8 Hz', () => {
    const { surfaceMass_kg_m2, criticalFrequencies_Hz } = predicted(alone);
    expect(surfaceMass_kg_m2).toBeCloseTo(200, 9);
    // B = 1e9 · 0.1³ / 12(1 − 0.2²) = 86 806 N·m; 343.2²/2π · √(200/86 806) = 899.8 Hz.
    expect(criticalFrequencies_Hz[0]!.frequency_Hz).toBeCloseTo(899.8, 1);
  });

  test('a stack file brings them too, with the walls, and is computed to the digit like the notebook that has them', () => {
    const covering = {
      kind: 'covering',
      key: 'rubber',
      name: 'club rubber (invented)',
      source: 'invented for this test',
      surfaceMass_kg_m2: 7,
      thickness_m: 0.005,
      contactStiffness_N_m: 1e6,
    };
    const materials = [own, covering];
    const flanking = { kind: 'ordinary', R500_dB: 0, slope_dB_per_octave: 0 };
    const covered = { ...alone.stacks[0]!, covering: covering.key };
    const bare = predicted({ ...alone.stacks[0]!, materials }, '--stack');
    const lone = predicted({ ...covered, materials, flanking }, '--stack');
    expect(lone).toEqual(predicted({ ...alone, materials, flanking, stacks: [covered] }));
    expect(lone.surfaceMass_kg_m2 - bare.surfaceMass_kg_m2).toBeCloseTo(7, 9);
    expect(lone.ratings.Lnw).toBeLessThan(bare.ratings.Lnw);
    expect(Object.keys(lone.paths_dB)).toContain('flanking');
  });

  test('they are named in what is said of their numbers', () => {
    const { sensitivities } = predicted(alone, '--sensitivities');
    expect(sensitivities!.numbers.map(({ of }) => of)).toContain('rammed earth (invented)');
  });
});
