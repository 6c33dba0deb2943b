import { describe, expect, it } from 'vitest';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, fibre, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated, limp, lineAt, tauAt, turned } from './fixtures.ts';

const ANGLES = [0.05, 0.2, 0.5, 0.8, 0.99];
const FREQUENCIES = [50, 200, 1000, 4000];
const board = sheet('gypsum-board', 0.0127);
const deck = sheet('plywood', 0.0159);
const constantsWithoutCavityLoss = { ...MODEL_CONSTANTS, cavityAbsorption: 1e-9, openCavityEdgeAbsorption: 1e-9 };

describe('transfer matrices', () => {
  it('give a limp leaf the mass law 1/|1 + jωm cosθ/2ρc|² (closed form)', () => {
    for (const f of FREQUENCIES) {
      const line = lineAt(isolated(leaf([limp(20)])), f);
      for (const u of ANGLES) {
        const x = (2 * Math.PI * f * 20 * u) / (2 * 1.204 * 343.2);
        expect(tauAt(line, u)).toBeCloseTo(1 / (1 + x * x), 8);
      }
    }
  });

  it('give two limp leaves on air what London found, JASA 22, 1950 (closed form, no bridges)', () => {
    const [m1, m2, d] = [10, 16, 0.12];
    const gap = cavity({ joists: 'none', depth_m: d, supportHeight_m: 0 });
    for (const f of FREQUENCIES) {
      const lossless = { constants: constantsWithoutCavityLoss };
      const line = lineAt(isolated(leaf([limp(m1)]), gap, leaf([limp(m2)])), f, lossless);
      for (const u of ANGLES) {
        const omega = 2 * Math.PI * f;
        const [x1, x2] = [m1, m2].map((m) => (omega * m * u) / (2 * 1.204 * 343.2)) as [number, number];
        const phase = (2 * omega * d * u) / 343.2;
        // 1 + j(x1 + x2) − x1 x2 (1 − e^{−jphase})
        const re = 1 - x1 * x2 * (1 - Math.cos(phase));
        const im = x1 + x2 - x1 * x2 * Math.sin(phase);
        expect(tauAt(line, u) * (re * re + im * im)).toBeCloseTo(1, 4);
      }
    }
  });

  it('are the same upside down to 1e-9 (reciprocity), supports and all', () => {
    const layers = [
      leaf([sheet('gypsum-fibre-board', 0.025)]),
      mat('mat', 0.01, 2e7),
      leaf([deck]),
      cavity({ support: 'direct', joists: 'none', depth_m: 0.2, fill: [fibre('glass-fibre', 0.1)] }),
      leaf([board, board]),
      cavity({ support: 'clips', joists: 'none', depth_m: 0.05 }),
      leaf([board]),
    ] as const;
    // Turned over, the fill lies at the top of its cavity; a cavity filled to the brim is its own mirror image.
    const filled = layers.map((l) => (l.kind === 'cavity' ? { ...l, fill: [fibre('glass-fibre', 5)] } : l));
    for (const floor of [isolated(...filled), isolated(...layers.slice(0, 3))]) {
      for (const f of FREQUENCIES) {
        for (const u of ANGLES) {
          expect(tauAt(lineAt(floor, f), u) / tauAt(lineAt(turned(floor), f), u)).toBeCloseTo(1, 9);
        }
      }
    }
  });

  it('never pass on more than falls on them', () => {
    const wall = isolated(leaf([board]), cavity(), leaf([board]));
    for (const f of FREQUENCIES) for (const u of ANGLES) expect(tauAt(lineAt(wall, f), u)).toBeLessThanOrEqual(1);
  });

  it('make one leaf of two as the air between them vanishes', () => {
    const thin = cavity({ joists: 'none', depth_m: 1e-8, supportHeight_m: 0 });
    for (const f of FREQUENCIES) {
      for (const u of ANGLES) {
        const two = tauAt(lineAt(isolated(leaf([board]), thin, leaf([deck])), f), u);
        const one = tauAt(lineAt(isolated(leaf([board, deck])), f), u);
        expect(two / one).toBeCloseTo(1, 2);
      }
    }
  });

  it('make one leaf of two as the mat becomes rigid, and cut the lower one off as it becomes soft', () => {
    const [top, base] = [leaf([board]), leaf([deck])];
    for (const f of FREQUENCIES) {
      for (const u of ANGLES) {
        const one = tauAt(lineAt(isolated(leaf([board, deck])), f), u);
        const rigid = tauAt(lineAt(isolated(top, mat('steel', 0.01, 1e12), base), f), u);
        // Under the board's 9 kg/m² it is a third as stiff as declared, the stiffest the engine accepts.
        expect(Math.abs(rigid / one - 1)).toBeLessThan(0.02);
      }
    }
    const soft = isolated(top, mat('nothing', 0.01, 1e3), base);
    expect(tauAt(lineAt(soft, 1000), 0.7)).toBeLessThan(1e-14);
  });
});

it('eleven slabs one above another give finite levels, however little comes through', () => {
  const filled = cavity({ joists: 'none', depth_m: 0.4, fill: [fibre('mineral-wool', 0.4)] });
  const slabs = Array.from({ length: 11 }, () => leaf([sheet('concrete', 0.3)]));
  const { R_dB, Ln_dB } = predict(isolated(slabs[0]!, ...slabs.slice(1).flatMap((slab) => [filled, slab])));
  for (const level of [...R_dB, ...Ln_dB]) expect(Number.isFinite(level)).toBe(true);
});

describe('supports beside the cavity', () => {
  it('add nothing where they are infinitely soft', () => {
    const hung = cavity({ joists: 'none', support: 'hangers', depth_m: 0.2, supportStiffness_N_m: 1 });
    const free = cavity({ joists: 'none', support: 'direct', depth_m: 0.3, supportHeight_m: 0 });
    for (const f of FREQUENCIES) {
      const a = tauAt(lineAt(isolated(leaf([board]), hung, leaf([board])), f), 0.7);
      const b = tauAt(lineAt(isolated(leaf([board]), free, leaf([board])), f), 0.7);
      expect(a / b).toBeCloseTo(1, 3);
    }
  });

  it('bring the force on the lower leaf that its motion needs where both move together: F ≈ jωm v', () => {
    const tied = cavity({
      joists: 'none',
      support: 'hangers',
      depth_m: 0.1,
      supportHeight_m: 0,
      supportStiffness_N_m: 1e9,
      supportLineSpacing_m: 0.2,
      supportPointSpacing_m: 0.2,
    });
    const line = lineAt(isolated(leaf([deck]), tied, leaf([deck])), 30);
    line.at(0.3, Math.sqrt(1 - 0.09), false).march(true);
    const reaction = (2 * Math.PI * 30 * 0.0159 * 600) ** 2 * line.velocity2[1]!;
    expect(line.force2[0]! / reaction).toBeGreaterThan(0.8);
    expect(line.force2[0]! / reaction).toBeLessThan(1.25);
  });
});
