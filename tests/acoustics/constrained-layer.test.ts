import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import {
  type BendingSheet,
  constrainedPair,
  DAMPING_LAYER,
  type DampingLayer,
} from '#src/acoustics/constrained-layer.ts';
import type { Sheet } from '#src/acoustics/construction.ts';
import { leafPlate, plateAt } from '#src/acoustics/leaf-plate.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { leaf, sheet } from '../published/reference-constructions.ts';

const board = sheet('gypsum-board', 0.0127);
const fireRated = sheet('gypsum-board-fire-rated', 0.0159);
const plywood = sheet('plywood', 0.0159);
const steel = sheet('steel', 0.0006);

const STACKS: Record<string, Sheet[]> = {
  'two boards': [board, board],
  'gypsum board on plywood': [board, plywood],
  'three boards': [board, fireRated, plywood],
  'steel between boards': [board, steel, fireRated],
};

const place = { onMat: false, onJoists: false, carried_kg_m2: 0 };
const plate = (...args: Parameters<typeof leaf>) => leafPlate(leaf(...args), place, MODEL_CONSTANTS, ROOM_AIR);

function folded(sheets: readonly Sheet[], omega: number, layer: DampingLayer): BendingSheet {
  return plate([...sheets]).sheets.reduce<BendingSheet | undefined>(
    (above, below) => (above ? constrainedPair(above, below, omega, layer) : below),
    undefined,
  )!;
}

/** Complex numbers of this file. */
type C = readonly [re: number, im: number];
const plus = ([a, b]: C, [c, d]: C): C => [a + c, b + d];
const minus = ([a, b]: C, [c, d]: C): C => [a - c, b - d];
const times = ([a, b]: C, [c, d]: C): C => [a * c - b * d, a * d + b * c];
const over = (a: C, [c, d]: C): C => times(a, [c / (c * c + d * d), -d / (c * c + d * d)]);

/**
 * Stiffness of the stack at wave number k from the motion of every sheet in its plane, u_i, under w = 1: the one that balances
 * D_i k² u_i against the shear G/t (u_{i+1} − u_i + k d_i) of every layer, one equation a sheet.
 */
function byEverySheet(sheets: readonly Sheet[], layer: DampingLayer, k: number): C {
  const shear: C = [
    layer.shearModulus_Pa / layer.thickness_m,
    (layer.shearModulus_Pa * layer.lossFactor) / layer.thickness_m,
  ];
  const stretch = sheets.map((s): C => {
    const D = (s.youngsModulus_Pa * s.thickness_m) / (1 - s.poissonRatio ** 2);
    return [D * k * k, D * k * k * s.lossFactor];
  });
  const turn = sheets.slice(1).map((s, i) => k * ((s.thickness_m + sheets[i]!.thickness_m) / 2 + layer.thickness_m));
  // Tridiagonal, eliminated downwards: diagonal u_i − shear (u_{i−1} + u_{i+1}) = shear (turn_i − turn_{i−1}).
  const last = sheets.length - 1;
  const diagonal = stretch.map((s, i) => plus(s, times(shear, [i === 0 || i === last ? 1 : 2, 0])));
  const right = sheets.map((_, i) => times(shear, [(turn[i] ?? 0) - (turn[i - 1] ?? 0), 0]));
  for (let i = 1; i <= last; i++) {
    const ratio = over(shear, diagonal[i - 1]!);
    diagonal[i] = minus(diagonal[i]!, times(ratio, shear));
    right[i] = plus(right[i]!, times(ratio, right[i - 1]!));
  }
  const u: C[] = [];
  for (let i = last; i >= 0; i--) {
    u[i] = over(i === last ? right[i]! : plus(right[i]!, times(shear, u[i + 1]!)), diagonal[i]!);
  }
  let energy: C = [0, 0];
  sheets.forEach((_, i) => {
    energy = plus(energy, times(stretch[i]!, times(u[i]!, u[i]!)));
    if (i === last) return;
    const slip = plus(minus(u[i + 1]!, u[i]!), [turn[i]!, 0]);
    energy = plus(energy, times(shear, times(slip, slip)));
  });
  const own = sheets.reduce<C>(
    (sum, s) => {
      const B = (s.youngsModulus_Pa * s.thickness_m ** 3) / 12 / (1 - s.poissonRatio ** 2);
      return plus(sum, [B, B * s.lossFactor]);
    },
    [0, 0],
  );
  return plus(own, over(energy, [k ** 4, 0]));
}

/** The same at a frequency: k of its own free bending wave, by halving. */
function freeWave(sheets: readonly Sheet[], layer: DampingLayer, omega: number): C {
  const mass = sheets.reduce((sum, s) => sum + s.density_kg_m3 * s.thickness_m, 0);
  let [low, high] = [0.01, 1000];
  while (high / low > 1 + 1e-12) {
    const k = Math.sqrt(low * high);
    if (byEverySheet(sheets, layer, k)[0] * k ** 4 > omega * omega * mass) high = k;
    else low = k;
  }
  return byEverySheet(sheets, layer, low);
}

describe.each(Object.entries(STACKS))('%s with damping layers between', (_, sheets) => {
  it('as stiff and as lossy as glued where the layers are thin and do not give', () => {
    const rigid = { thickness_m: 1e-9, shearModulus_Pa: 1e15, lossFactor: 0 };
    const glued = plate([...sheets], 'bonded');
    const found = folded(sheets, 2 * Math.PI * 500, rigid);
    expect(found.bending_Nm / glued.staticBending_Nm).toBeCloseTo(1, 3);
    const { lossFactor } = plateAt(glued, 500, { bending_Nm: 0, lossFactor: 0 });
    // Of three sheets the first two are one by then, their losses not where each lies.
    expect(Math.abs(found.lossFactor / lossFactor - 1)).toBeLessThan(sheets.length === 2 ? 0.002 : 0.1);
  });

  it('as stiff and as lossy as loose where the layers give without end', () => {
    const soft = { thickness_m: 1e-3, shearModulus_Pa: 1e-3, lossFactor: 0 };
    const loose = plate([...sheets]);
    const found = folded(sheets, 2 * Math.PI * 500, soft);
    expect(found.bending_Nm / loose.staticBending_Nm).toBeCloseTo(1, 6);
    const own = loose.sheets.reduce((sum, s) => sum + s.bending_Nm * s.lossFactor, 0) / loose.staticBending_Nm;
    expect(found.lossFactor / own).toBeCloseTo(1, 6);
  });

  const within = sheets.length === 2 ? 0.01 : 0.25;
  it.each([63, 250, 1000, 4000])(`at %d Hz is what every sheet's own motion makes, within ${within}`, (f_Hz) => {
    const omega = 2 * Math.PI * f_Hz;
    const [real, imaginary] = freeWave(sheets, DAMPING_LAYER, omega);
    const { bending_Nm, lossFactor } = folded(sheets, omega, DAMPING_LAYER);
    expect(Math.abs(bending_Nm / real - 1)).toBeLessThan(within);
    expect(Math.abs(lossFactor / (imaginary / real) - 1)).toBeLessThan(within);
  });
});

it('two equal boards lose at best η2 Y/(2 + Y + 2√((1+Y)(1+η2²))) (Ross, Ungar & Kerwin 1959, from memory)', () => {
  // Without loss of their own; Y = 3 (1 + t2/h)² is what glueing adds to both boards' stiffness.
  const lossless = { ...board, lossFactor: 0 };
  for (const layer of [
    DAMPING_LAYER,
    { ...DAMPING_LAYER, lossFactor: 0.3 },
    { ...DAMPING_LAYER, thickness_m: 0.004 },
  ]) {
    const Y = 3 * (1 + layer.thickness_m / board.thickness_m) ** 2;
    const root = Math.sqrt((1 + Y) * (1 + layer.lossFactor ** 2));
    let best = 0;
    for (let f_Hz = 5; f_Hz < 20_000; f_Hz *= 1.01) {
      best = Math.max(best, folded([lossless, lossless], 2 * Math.PI * f_Hz, layer).lossFactor);
    }
    expect(best / ((layer.lossFactor * Y) / (2 + Y + 2 * root))).toBeCloseTo(1, 3);
  }
});
