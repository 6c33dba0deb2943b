import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import type { Leaf } from '#src/acoustics/construction.ts';
import { type LeafPlate, leafPlate, plateAt } from '#src/acoustics/leaf-plate.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { leaf, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const plate = (l: Leaf): LeafPlate => leafPlate(l, { onMat: false, onJoists: false, carried_kg_m2: 0 }, ROOM_AIR);
const state = (l: Leaf, f: number) => plateAt(plate(l), f, MODEL_CONSTANTS, { bending_Nm: 0, lossFactor: 0 });

describe('critical frequency × thickness', () => {
  it.each([
    ['glass', 12.7],
    ['gypsum-board', 38],
    ['plywood', 20],
    ['steel', 12.4],
    ['concrete', 19],
  ])(
    'of %s is %d Hz·m within 10 % (Long, Architectural Acoustics, 2006, table 9.1; concrete: EN 12354-1, from memory)',
    (key, published) => {
      const { criticalFrequency_Hz } = plate(leaf([sheet(key, 0.01)]));
      expect(Math.abs((criticalFrequency_Hz * 0.01) / published - 1)).toBeLessThan(0.1);
    },
  );
});

describe('sheets on each other', () => {
  const board = sheet('gypsum-board', 0.0127);
  const B = plate(leaf([board])).staticBending_Nm;

  it('add their stiffness when loose', () => {
    expect(plate(leaf([board, board])).staticBending_Nm).toBeCloseTo(2 * B, 8);
  });

  it('are one sheet of both thicknesses when bonded: eight times as stiff', () => {
    expect(plate(leaf([board, board], 'bonded')).staticBending_Nm / B).toBeCloseTo(8, 8);
  });

  it('lie between loose and bonded, and lose more, with a damping layer between (Ross, Ungar & Kerwin 1959)', () => {
    for (const f of [100, 1000, 4000]) {
      const { bending_Nm, lossFactor } = state(leaf([board, board], 'damped'), f);
      expect(bending_Nm).toBeGreaterThan(1.9 * B * 0.9);
      expect(bending_Nm).toBeLessThan(8 * B * 1.6);
      expect(lossFactor).toBeGreaterThan(2.5 * board.lossFactor);
    }
    const free = predict(isolated(leaf([board, board])));
    const damped = predict(isolated(leaf([board, board], 'damped')));
    const dip = free.bands_Hz.indexOf(3150);
    expect(damped.R_dB[dip]!).toBeGreaterThan(free.R_dB[dip]! + 3);
  });

  it('soften with frequency when thick (EN 12354-1:2000 Annex B)', () => {
    const slab = leaf([sheet('concrete', 0.2)]);
    expect(state(slab, 50).bending_Nm / plate(slab).staticBending_Nm).toBeGreaterThan(0.97);
    expect(state(slab, 2000).bending_Nm / plate(slab).staticBending_Nm).toBeLessThan(0.5);
  });
});

it('an orthotropic leaf insulates between its two isotropic cousins, within 3 dB, since it has coincidence in every band between theirs', () => {
  const timber = (along: number, across: number) =>
    predict(
      isolated(
        leaf([sheet('cross-laminated-timber', 0.14, { youngsModulus_Pa: along, youngsModulusAcross_Pa: across })]),
      ),
    ).R_dB;
  const [stiff, soft, both] = [timber(8e9, 8e9), timber(4e9, 4e9), timber(8e9, 4e9)];
  both.forEach((R, i) => {
    expect(R).toBeGreaterThan(Math.min(stiff[i]!, soft[i]!) - 3);
    expect(R).toBeLessThan(Math.max(stiff[i]!, soft[i]!) + 3);
  });
});
