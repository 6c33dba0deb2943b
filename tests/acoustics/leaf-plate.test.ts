import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import type { Leaf } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { type LeafPlate, leafPlate, plateAt } from '#src/acoustics/leaf-plate.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import { leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const plate = (l: Leaf): LeafPlate =>
  leafPlate(l, { onMat: false, onJoists: false, carried_kg_m2: 0 }, MODEL_CONSTANTS, ROOM_AIR);
const state = (l: Leaf, f: number) => plateAt(plate(l), f, { bending_Nm: 0, lossFactor: 0 });

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

  // How much, and how stiff: `constrained-layer.test.ts`.
  it('lose more at coincidence with a damping layer between, and let less pass there', () => {
    const free = predict(isolated(leaf([board, board])));
    const damped = predict(isolated(leaf([board, board], 'damped')));
    const dip = free.bands_Hz.indexOf(3150);
    expect(damped.R_dB[dip]!).toBeGreaterThan(free.R_dB[dip]! + 3);
  });

  it('lose, bonded, by what each holds of the energy, stretched or bent (own hand-worked case)', () => {
    // A facing of 0.2 mm with 200 GPa on a core of 20 mm with 5 GPa, ν = 0: Eh of 40 and 100 MN/m, middles 10.1 mm apart, so
    // the axis 2.886 mm from the core's middle and 7.214 mm from the facing's. Facing 0.1 + 40e6 · 7.214² · 1e-6 = 2082 N·m,
    // core 3333 + 100e6 · 2.886² · 1e-6 = 4166 N·m.
    const plain = { poissonRatio: 0, form: 'board' } as const;
    const facing = sheet('steel', 0.0002, { ...plain, youngsModulus_Pa: 200e9, lossFactor: 0 });
    const core = sheet('plywood', 0.02, { ...plain, youngsModulus_Pa: 5e9, lossFactor: 0.06 });
    expect(state(leaf([facing, core], 'bonded'), 100).lossFactor).toBeCloseTo((0.06 * 4166) / (4166 + 2082), 5);
    expect(state(leaf([facing, core]), 100).lossFactor).toBeCloseTo(0.06, 5);
  });

  it('soften with frequency when thick (EN 12354-1:2000 Annex B)', () => {
    const slab = leaf([sheet('concrete', 0.2)]);
    expect(state(slab, 50).bending_Nm / plate(slab).staticBending_Nm).toBeGreaterThan(0.97);
    expect(state(slab, 2000).bending_Nm / plate(slab).staticBending_Nm).toBeLessThan(0.5);
  });
});

describe('a topping', () => {
  const deck = sheet('osb', 0.0151);
  const joists = (l: Leaf) =>
    leafPlate(l, { onMat: false, onJoists: true, carried_kg_m2: 0 }, MODEL_CONSTANTS, ROOM_AIR);
  const on = (thickness_m: number) => joists(leaf([sheet('gypsum-concrete', thickness_m), deck]));
  const loss = (p: LeafPlate) => plateAt(p, 500, { bending_Nm: 0, lossFactor: 0 }).lossFactor;

  it('of usual thickness on a deck loses 0.10 to 0.12 in all (common practice, no source)', () => {
    for (const thickness_m of [0.025, 0.038, 0.05]) {
      expect(loss(on(thickness_m))).toBeGreaterThan(0.1);
      expect(loss(on(thickness_m))).toBeLessThan(0.12);
    }
  });

  it('takes loss and the joists’ drain under the hammer over from the deck by its share of the stiffness', () => {
    const bare = joists(leaf([deck]));
    expect(loss(bare)).toBeCloseTo(deck.lossFactor, 10);
    expect(bare.struckExtraLoss).toBe(MODEL_CONSTANTS.deckImpactLossFactor);
    const { castShare, struckExtraLoss } = on(0.012);
    expect(castShare).toBeGreaterThan(0.4);
    expect(castShare).toBeLessThan(0.6);
    expect(struckExtraLoss).toBeCloseTo((1 - castShare) * MODEL_CONSTANTS.deckImpactLossFactor, 10);
    // Thick boards soften a little at 500 Hz, not by the same factor.
    expect(loss(on(0.012))).toBeCloseTo(castShare * 0.11 + (1 - castShare) * deck.lossFactor, 3);
  });

  it('is a slab built in where it is by far the stiffer and nothing carries its boards', () => {
    expect(plate(leaf([sheet('concrete', 0.15), sheet('gypsum-board', 0.0127)])).builtInShare).toBeGreaterThan(0.999);
    expect(
      plate(leaf([sheet('cement-screed', 0.05), sheet('cross-laminated-timber', 0.16)])).builtInShare,
    ).toBeLessThan(0.1);
    expect(on(0.05).builtInShare).toBe(0);
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

it('what is built in loses 0.001 at least, its sheets and its mats', () => {
  const glass = sheet('glass', 0.006, { lossFactor: 1e-4 });
  const { plates, interlayers } = floorModel(
    isolated(leaf([glass]), mat('mat', 0.01, 2e7, 1e-4), leaf([glass])),
    MODEL_CONSTANTS,
  );
  expect(plateAt(plates[1]!, 1000, { bending_Nm: 0, lossFactor: 0 }).lossFactor).toBe(0.001);
  expect(interlayers[0]).toMatchObject({ kind: 'mat', mat: { lossFactor: 0.001 } });
});
