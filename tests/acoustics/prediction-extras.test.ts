import { describe, expect, it } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, fibre, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated, limp } from './fixtures.ts';

describe('resonances', () => {
  it('two leaves on air alone: (1/2π) √(ρc²/d (1/m1 + 1/m2)) (own hand-worked case)', () => {
    const { resonances_Hz } = predict(
      isolated(leaf([limp(10)]), cavity({ joists: 'none', depth_m: 0.1, supportHeight_m: 0 }), leaf([limp(15)])),
    );
    // √(1.204 · 343.2² / 0.1 · (1/10 + 1/15)) / 2π = 77.4 Hz; c/2d = 1716 Hz
    expect(resonances_Hz.find((r) => r.kind === 'mass-spring-mass')!.frequency_Hz).toBeCloseTo(77.38, 1);
    expect(resonances_Hz.find((r) => r.kind === 'cavity')!.frequency_Hz).toBeCloseTo(1716, 6);
  });

  it('three equal masses on equal springs: √(s/m)/2π times 1 and √3 (closed form)', () => {
    const m = leaf([limp(10)]);
    // Declared so that under 10 and under 20 kg/m² both are as stiff.
    const spring = (carried_kg_m2: number) => mat('mat', 0.01, 1e7 / Math.cbrt(carried_kg_m2 / 200));
    const found = predict(isolated(m, spring(10), m, spring(20), m)).resonances_Hz.filter((r) => r.kind === 'floating');
    const unit = Math.sqrt(1e7 / 10) / (2 * Math.PI);
    expect(found.map((r) => r.frequency_Hz / unit)).toEqual([expect.closeTo(1, 9), expect.closeTo(Math.sqrt(3), 9)]);
  });
});

it('resonances across two cavities name their leaves', () => {
  const gap = cavity({ joists: 'none', depth_m: 0.1, supportHeight_m: 0 });
  const { resonances_Hz } = predict(isolated(leaf([limp(10)]), gap, leaf([limp(15)]), gap, leaf([limp(20)])));
  const names = resonances_Hz.filter(({ kind }) => kind === 'cavity').map(({ name }) => name);
  expect(names).toHaveLength(2);
  expect(new Set(names).size).toBe(2);
});

describe('leaks', () => {
  const slit = { name: 'slit', width_m: 0.002, length_m: 3, depth_m: 0.1 };

  it('spoil a good floor at high frequency, and are no path of it when they have no area', () => {
    const floor = isolated(
      leaf([sheet('concrete', 0.1)]),
      cavity({ joists: 'none', support: 'hangers', depth_m: 0.2, fill: [fibre('glass-fibre', 0.1)] }),
      leaf([sheet('gypsum-board', 0.0127)]),
    );
    const tight = predict(floor);
    const leaky = predict({ ...floor, leaks: [slit] });
    expect(leaky.R_dB.at(-3)!).toBeLessThan(tight.R_dB.at(-3)! - 10);
    for (const sealed of [{ width_m: 0 }, { length_m: 0 }]) {
      expect(predict({ ...floor, leaks: [{ ...slit, ...sealed }] })).toEqual(tight);
    }
  });
});

it('masses and heights add up (own hand-worked case)', () => {
  const p = predict(
    isolated(
      leaf([sheet('plywood', 0.016)]),
      cavity({ support: 'resilient-channel', fill: [fibre('glass-fibre', 0.1)] }),
      leaf([sheet('gypsum-board', 0.0127)]),
    ),
  );
  // 9.6 + 450 · 0.038 · 0.235/0.406 + 1.4 + 8.89 kg/m²; 0.016 + 0.235 + 0.0127 + 0.0127 m
  expect(p.surfaceMass_kg_m2).toBeCloseTo(9.6 + 9.898 + 1.4 + 8.89, 2);
  expect(p.height_m).toBeCloseTo(0.2764, 6);
});

it('bands below 50 Hz come on request, and those above stay as they were', () => {
  const floor = isolated(leaf([sheet('concrete', 0.1)]));
  const [usual, low] = [predict(floor), predict(floor, { lowestBand_Hz: 20 })];
  expect(low.bands_Hz.slice(0, 4)).toEqual([20, 25, 31.5, 40]);
  expect(low.R_dB.slice(4)).toEqual(usual.R_dB);
});
