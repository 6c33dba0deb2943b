import { describe, expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import { propagatedUncertainty, type Tolerance } from '#src/acoustics/tolerances.ts';
import { cavity, floor, leaf, sheet } from '../published/reference-constructions.ts';

const board = floor(
  leaf([sheet('osb', 0.018)]),
  cavity({ support: 'resilient-channel', supportStiffness_N_m: 4e5 }),
  leaf([sheet('gypsum-board', 0.0127)]),
);

const THICKNESS: Tolerance = {
  name: 'board thickness',
  path: 'layers/2/sheets/0/thickness_m',
  standardUncertainty: 0.0005,
};
const STIFFNESS: Tolerance = {
  name: 'channel stiffness',
  path: 'layers/1/supportStiffness_N_m',
  standardUncertainty: 1e5,
};
const DENSITY: Tolerance = {
  name: 'deck density',
  path: 'layers/0/sheets/0/density_kg_m3',
  standardUncertainty: 30,
};

describe('tolerances of parameters', () => {
  it('own case by hand: y = (3 a, a + 2 b) with u(a) = 0.2 and u(b) = 0.3 gives 0.6 and √(0.04 + 0.36)', () => {
    const linear = (c: Construction) => [3 * c.length_m, c.length_m + 2 * c.width_m];
    const { standard_dB, contributions } = propagatedUncertainty(
      board,
      [
        { name: 'a', path: 'length_m', standardUncertainty: 0.2 },
        { name: 'b', path: 'width_m', standardUncertainty: 0.3 },
      ],
      linear,
    );
    expect(standard_dB[0]).toBeCloseTo(0.6, 12);
    expect(standard_dB[1]).toBeCloseTo(Math.sqrt(0.4), 12);
    expect(contributions.map((c) => c.standard_dB[1]!.toFixed(9))).toEqual(['0.200000000', '0.600000000']);
  });

  it('own case by hand: 1 % of mass is 20 lg e · 0.01 = 0.0869 dB by the mass law', () => {
    const mass = (c: Construction) => [
      massLaw_dB({ surfaceMass_kg_m2: 10 * c.length_m, frequency_Hz: 500, incidence: 'normal' }),
    ];
    const u = propagatedUncertainty(
      board,
      [{ name: 'mass', path: 'length_m', standardUncertainty: 0.01 * board.length_m }],
      mass,
    );
    expect(u.standard_dB[0]).toBeCloseTo(20 * Math.LOG10E * 0.01, 4);
  });

  it('none, or none that is uncertain, give zero in every band', () => {
    const zero = propagatedUncertainty(board, [{ ...THICKNESS, standardUncertainty: 0 }]).standard_dB;
    expect(zero).toHaveLength(21);
    expect(zero.every((u) => u === 0)).toBe(true);
    expect(propagatedUncertainty(board, []).standard_dB).toEqual(zero);
  });

  it('more uncertain parameters never make less uncertainty', () => {
    let before = propagatedUncertainty(board, []).standard_dB;
    for (const count of [1, 2, 3]) {
      const now = propagatedUncertainty(board, [THICKNESS, STIFFNESS, DENSITY].slice(0, count)).standard_dB;
      now.forEach((u, i) => {
        expect(u).toBeGreaterThanOrEqual(before[i]!);
      });
      expect(Math.max(...now)).toBeGreaterThan(0.05);
      before = now;
    }
  });

  it('twice the uncertainty is nearly twice the effect, while it is small', () => {
    const once = propagatedUncertainty(board, [STIFFNESS]).standard_dB;
    const twice = propagatedUncertainty(board, [{ ...STIFFNESS, standardUncertainty: 2e5 }]).standard_dB;
    const strongest = once.indexOf(Math.max(...once));
    expect(twice[strongest]! / once[strongest]!).toBeGreaterThan(1.7);
    expect(twice[strongest]! / once[strongest]!).toBeLessThan(2.4);
  });

  it('stays at zero or above where a thickness may be missing, and leaves the construction as it was', () => {
    const before = JSON.stringify(board);
    const wide = propagatedUncertainty(board, [{ ...THICKNESS, standardUncertainty: 0.02 }]).standard_dB;
    expect(wide.every((u) => Number.isFinite(u))).toBe(true);
    expect(JSON.stringify(board)).toBe(before);
  });

  it('says which tolerance names no number or is none', () => {
    expect(() => propagatedUncertainty(board, [{ ...THICKNESS, path: 'layers/9/depth_m' }])).toThrow(
      'path must name a number of the construction, got "layers/9/depth_m"',
    );
    expect(() => propagatedUncertainty(board, [{ ...THICKNESS, standardUncertainty: -1 }])).toThrow(
      'standardUncertainty must be >= 0, got -1 (board thickness)',
    );
  });
});
