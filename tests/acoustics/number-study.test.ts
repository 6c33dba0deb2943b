import { describe, expect, it } from 'vitest';
import { withNumber } from '#src/acoustics/number-path.ts';
import { type StudiedNumber, studyNumbers } from '#src/acoustics/number-study.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, fibre, floor, leaf, sheet } from '../published/reference-constructions.ts';
import { isolated, limp } from './fixtures.ts';

const joists = floor(
  leaf([sheet('osb', 0.018)]),
  cavity({ support: 'resilient-channel', fill: [fibre('glass-fibre', 0.1)] }),
  leaf([sheet('gypsum-board', 0.0127)]),
);
const MASS: StudiedNumber = { path: 'layers/0/sheets/0/density_kg_m3', value: 600, tolerance: 0.05 };
const STIFFNESS: StudiedNumber = { path: 'layers/1/supportStiffness_N_m', value: 4e5, tolerance: 0.3 };

describe('a study of numbers', () => {
  it('mass law: 1 % of a limp mass is 0.0869 dB, and ± 5 % never left gives 20 lg e · 0.05/√3 = 0.25 dB', () => {
    const mass = { path: 'layers/0/sheets/0/density_kg_m3', tolerance: 0.05 };
    const board = limp(40);
    const { bands_Hz, numbers, standardR_dB } = studyNumbers(isolated(leaf([board])), [
      { ...mass, value: board.density_kg_m3 },
    ]);
    bands_Hz.forEach((f, i) => {
      if (f < 200 || f > 2000) return;
      expect(numbers[0]!.dR_dB[i]! * 0.01, `${f} Hz`).toBeCloseTo(0.0869, 2);
      expect(standardR_dB[i]!, `${f} Hz`).toBeCloseTo((20 * Math.LOG10E * 0.05) / Math.sqrt(3), 1);
    });
  });

  it('tells of 1 % more what two predictions 1 % apart tell', () => {
    const { numbers } = studyNumbers(joists, [MASS]);
    const [a, b] = [0.995, 1.005].map((by) => predict(withNumber(joists, MASS.path, MASS.value * by)));
    numbers[0]!.dR_dB.forEach((slope, i) => {
      expect(Math.abs(slope * 0.01 - (b!.R_dB[i]! - a!.R_dB[i]!))).toBeLessThan(0.03);
    });
    numbers[0]!.dLn_dB.forEach((slope, i) => {
      expect(Math.abs(slope * 0.01 - (b!.Ln_dB[i]! - a!.Ln_dB[i]!))).toBeLessThan(0.03);
    });
  });

  it('adds what independent numbers do as squares', () => {
    const parts = [MASS, STIFFNESS].map((n) => studyNumbers(joists, [n]));
    const both = studyNumbers(joists, [MASS, STIFFNESS]);
    both.standardR_dB.forEach((u, i) => {
      expect(u).toBeCloseTo(Math.hypot(...parts.map((p) => p.standardR_dB[i]!)), 9);
    });
    both.standardLn_dB.forEach((u, i) => {
      expect(u).toBeCloseTo(Math.hypot(...parts.map((p) => p.standardLn_dB[i]!)), 9);
    });
    expect(Math.max(...both.standardR_dB)).toBeGreaterThan(0.1);
  });

  it('reaches a number that the construction leaves to what is usual', () => {
    const [slopes] = studyNumbers(joists, [STIFFNESS]).numbers;
    expect(Math.max(...slopes!.dR_dB.map(Math.abs))).toBeGreaterThan(0.5);
  });

  it('sets those apart that stand at the edge of what the engine accepts', () => {
    const edge: StudiedNumber = { path: 'layers/2/sheets/0/poissonRatio', value: 0.49, tolerance: 0.1 };
    const { numbers, atTheEdge, standardR_dB } = studyNumbers(joists, [edge, MASS]);
    expect(atTheEdge).toEqual([{ ...edge, reason: expect.stringMatching(/^poissonRatio must be /) }]);
    expect(numbers.map((n) => n.path)).toEqual([MASS.path]);
    expect(standardR_dB).toEqual(studyNumbers(joists, [MASS]).standardR_dB);
  });

  it('of nothing is certain', () => {
    expect(studyNumbers(joists, []).standardR_dB.every((u) => u === 0)).toBe(true);
  });

  it('refuses a construction that the engine refuses', () => {
    expect(() => studyNumbers({ ...joists, length_m: -1 }, [MASS])).toThrow('length_m must be');
  });
});
