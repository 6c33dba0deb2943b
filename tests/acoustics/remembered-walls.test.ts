import { describe, expect, it } from 'vitest';
import type { Cavity } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, fibre, floor, leaf, sheet } from '../published/reference-constructions.ts';

const boards = (layers: number, key: string, thickness_m: number) =>
  leaf(Array.from({ length: layers }, () => sheet(key, thickness_m)));

// DIN 4109-33:2016, walls of gypsum board on steel studs every 625 mm with mineral wool (from memory; no copy at hand).
describe('walls on steel studs, boards of 12.5 mm', () => {
  const frame: Partial<Cavity> = {
    joists: 'cold-formed-steel',
    joistWidth_m: 0.05,
    joistSpacing_m: 0.625,
    supportPointSpacing_m: 0.25,
  };
  const wall = (layers: number, wool_m: number, between: Partial<Cavity>) => {
    const gypsum = boards(layers, 'gypsum-board', 0.0125);
    const filled = cavity({ ...frame, ...between, fill: [fibre('mineral-wool', wool_m)] });
    return predict(floor(gypsum, filled, gypsum)).ratings.Rw;
  };

  it.each([
    [1, 0.05, 0.04, 41],
    [1, 0.075, 0.06, 42],
    [1, 0.1, 0.08, 45],
    [2, 0.05, 0.04, 50],
    [2, 0.075, 0.06, 52],
    [2, 0.1, 0.08, 54],
  ])('in one row, %d on each side, studs of %d m, wool of %d m: Rw %d within 2 dB', (layers, stud_m, wool_m, Rw) => {
    expect(Math.abs(wall(layers, wool_m, { depth_m: stud_m }) - Rw)).toBeLessThanOrEqual(2);
  });

  it.each([
    [0.105, 0.04, 61],
    [0.155, 0.06, 63],
    [0.205, 0.08, 64],
  ])('in two rows, two on each side, %d m apart, wool of %d m: Rw %d within 3 dB', (depth_m, wool_m, Rw) => {
    const rows = { support: 'separate-joists', depth_m: depth_m / 2, supportHeight_m: depth_m / 2 } as const;
    expect(Math.abs(wall(2, wool_m, rows) - Rw)).toBeLessThanOrEqual(3);
  });
});

// A national building code's table of walls (from memory; no copy at hand).
describe('walls on wood studs 38 × 89 mm every 406 mm with resilient channel, fire-rated board and glass fibre', () => {
  it.each([
    [1, 1, 47],
    [2, 1, 51],
    [2, 2, 55],
  ])('%d and %d boards of 15.9 mm: STC %d within 2 points', (near, far, STC) => {
    const channel = { support: 'resilient-channel', supportLineSpacing_m: 0.61, depth_m: 0.089 } as const;
    const filled = cavity({ ...channel, fill: [fibre('glass-fibre', 0.09)] });
    const wall = floor(
      boards(near, 'gypsum-board-fire-rated', 0.0159),
      filled,
      boards(far, 'gypsum-board-fire-rated', 0.0159),
    );
    expect(Math.abs(predict(wall).ratings.STC - STC)).toBeLessThanOrEqual(2);
  });
});
