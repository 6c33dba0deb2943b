import { describe, expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { ribFactor } from '#src/acoustics/ribbed-deck.ts';
import { cavity, leaf, mat, sheet } from '../published/reference-constructions.ts';
import { isolated, lineAt } from './fixtures.ts';

const deck = leaf([sheet('osb', 0.018)]);
const ceiling = leaf([sheet('gypsum-board', 0.0125)]);
const joists = { depth_m: 0.2, joistWidth_m: 0.05, joistSpacing_m: 0.4 } as const;
const framed = isolated(deck, cavity(joists), ceiling);

function factor(construction: Construction, f_Hz: number): number {
  return ribFactor(floorModel(construction, MODEL_CONSTANTS), lineAt(construction, f_Hz).states, f_Hz);
}

/** Re Y of an unbounded orthotropic plate: an isotropic one's in every direction, averaged over them. */
function orthotropicMobility(along_Nm: number, across_Nm: number, mass_kg_m2: number): number {
  const turns = 20_000;
  let sum = 0;
  for (let i = 0; i < turns; i++) {
    const phi = ((i + 0.5) * Math.PI) / 2 / turns;
    const root = Math.sqrt(along_Nm) * Math.cos(phi) ** 2 + Math.sqrt(across_Nm) * Math.sin(phi) ** 2;
    sum += 1 / (8 * root * Math.sqrt(mass_kg_m2));
  }
  return sum / turns;
}

describe('joists as ribs under a struck deck', () => {
  // 18 mm OSB of 600 kg/m³ and 5 GPa on joists of softwood, 450 kg/m³ and 10 GPa.
  const B = (5e9 * 0.018 ** 3) / 12 / (1 - 0.3 ** 2);
  const m = 600 * 0.018;
  const ribs = { bending: (10e9 * 0.05 * 0.2 ** 3) / 12 / 0.4, mass: (450 * 0.05 * 0.2) / 0.4 };

  it('hold its field at long waves by mobility over mass of the ribbed plate, averaged over directions', () => {
    const ribbed = orthotropicMobility(B + ribs.bending, B, m + ribs.mass) / (m + ribs.mass);
    const alone = 1 / (8 * Math.sqrt(B * m)) / m;
    expect(factor(framed, 0.5)).toBeCloseTo(ribbed / alone, 3);
  });

  it('leave short waves as they are, and hold the less the higher the frequency', () => {
    const factors = [1, 30, 60, 125, 250, 500, 1000, 4000, 20_000].map((f_Hz) => factor(framed, f_Hz));
    expect(factors).toEqual(factors.toSorted((a, b) => a - b));
    expect(factors.at(-1)).toBeCloseTo(1, 2);
    expect(factors[0]).toBeGreaterThan(0);
  });

  it('are half as far in where half a bending wave is as long as a bay', () => {
    // √(ω√(m/B)) b = π
    const f_Hz = ((Math.PI / 0.4) ** 2 * Math.sqrt(B / m)) / (2 * Math.PI);
    expect((1 - factor(framed, f_Hz)) / (1 - factor(framed, 0.5))).toBeCloseTo(0.5, 2);
  });

  it('are nothing to a floor without joists or joists without weight and stiffness', () => {
    expect(factor(isolated(deck), 100)).toBe(1);
    expect(factor(isolated(deck, cavity({ joists: 'none', support: 'hangers' }), ceiling), 100)).toBe(1);
    expect(
      factor(isolated(deck, cavity({ ...joists, joistWidth_m: 0.0003, depth_m: 0.005 }), ceiling), 0.5),
    ).toBeCloseTo(1, 3);
  });
});

describe('joists under a deck that carries a screed on a mat', () => {
  const screed = leaf([sheet('cement-screed', 0.05)]);
  const on = (stiffness_N_m3: number) =>
    isolated(screed, mat('mat', 0.02, stiffness_N_m3), deck, cavity(joists), ceiling);

  it('are out of its reach on a mat of hardly any stiffness', () => {
    expect(factor(on(1000), 50)).toBeCloseTo(1, 6);
  });

  it('hold it on a rigid one as they hold screed and deck in one loose leaf', () => {
    const B = (25e9 * 0.05 ** 3) / 12 / (1 - 0.2 ** 2) + (5e9 * 0.018 ** 3) / 12 / (1 - 0.3 ** 2);
    const m = 2200 * 0.05 + 600 * 0.018;
    const ribs = { bending: (10e9 * 0.05 * 0.2 ** 3) / 12 / 0.4, mass: (450 * 0.05 * 0.2) / 0.4 };
    const ribbed = orthotropicMobility(B + ribs.bending, B, m + ribs.mass) / (m + ribs.mass);
    expect(factor(on(1e12), 0.5)).toBeCloseTo(ribbed / (1 / (8 * Math.sqrt(B * m)) / m), 3);
  });
});
