import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type FlankingElement,
  flankingPathR_dB,
  flankingSimplified,
} from '#src/acoustics/standards/iso-12354-1-simplified.ts';
import { impactFlankingCorrection_dB, impactSimplified } from '#src/acoustics/standards/iso-12354-2-simplified.ts';
import {
  type Junction,
  type JunctionPath,
  leastVibrationReductionIndex_dB,
  vibrationReductionIndex_dB,
} from '#src/acoustics/standards/vibration-reduction.ts';
import { PUBLISHED_TABLES } from '../../published/ratings-tables.ts';

const floor = { Rw_dB: 52, area_m2: 12 };
const wall: FlankingElement = {
  name: 'north wall',
  sourceRw_dB: 46,
  receivingRw_dB: 46,
  sourceArea_m2: 10,
  receivingArea_m2: 10,
  junctionLength_m: 4,
  straightK_dB: 6,
  cornerK_dB: 6,
};

/** The worked example of Annex H.2 gives path spectra and their ratings; these are judged with the rating of Rw. */
describe('EN 12354-1:2000, clause 4.4, simplified', () => {
  it('own case by hand: 52 dB direct, Ff 46 + 6 + 10 lg 3 = 56.77, Fd and Df 59.77 each; together 49.78', () => {
    const { Rw_dB, paths } = flankingSimplified(floor, [wall]);
    expect(paths.map((p) => [p.route, Math.round(p.Rw_dB * 100) / 100])).toEqual([
      ['Dd', 52],
      ['Ff', 56.77],
      ['Fd', 59.77],
      ['Df', 59.77],
    ]);
    expect(Rw_dB).toBeCloseTo(49.78, 2);
    expect(paths.reduce((sum, p) => sum + p.share, 0)).toBeCloseTo(1, 12);
  });

  it('without flanking elements it is the floor alone', () => {
    expect(flankingSimplified(floor, []).Rw_dB).toBeCloseTo(52, 12);
  });

  it('a lining counts in full on the better side and by half on the other', () => {
    const lined = flankingSimplified({ ...floor, sourceLining_dB: 8, receivingLining_dB: 12 }, []);
    expect(lined.Rw_dB).toBeCloseTo(52 + 12 + 4, 12);
  });

  it('a lining on the wall below acts on Ff and Df, not on Fd', () => {
    const bare = flankingSimplified(floor, [wall]).paths;
    const lined = flankingSimplified(floor, [{ ...wall, receivingLining_dB: 10 }]).paths;
    expect(lined.map((p, i) => Math.round(p.Rw_dB - bare[i]!.Rw_dB))).toEqual([0, 10, 0, 10]);
  });

  it('K_ij never counts for less than geometry allows: 10 lg[4 (1/10 + 1/10)] = −0.97', () => {
    expect(leastVibrationReductionIndex_dB(4, 10, 10)).toBeCloseTo(-0.969, 3);
    const least = flankingSimplified(floor, [{ ...wall, straightK_dB: -20 }]).paths[1]!;
    expect(least.Rw_dB).toBeCloseTo(46 - 0.969 + 10 * Math.log10(3), 3);
  });

  it('more elements never help; better elements never harm', () => {
    const R = fc.double({ min: 30, max: 70, noNaN: true });
    fc.assert(
      fc.property(R, R, fc.double({ min: 0, max: 15, noNaN: true }), (source, receiving, better) => {
        const one = { ...wall, sourceRw_dB: source, receivingRw_dB: receiving };
        const with1 = flankingSimplified(floor, [one]).Rw_dB;
        expect(with1).toBeLessThan(52);
        expect(flankingSimplified(floor, [one, wall]).Rw_dB).toBeLessThan(with1);
        expect(flankingSimplified(floor, [{ ...one, sourceRw_dB: source + better }]).Rw_dB).toBeGreaterThanOrEqual(
          with1,
        );
      }),
    );
  });

  it('the formula serves single bands too and is the same in both directions', () => {
    const path = {
      sourceR_dB: 40,
      receivingR_dB: 50,
      sourceLining_dB: 3,
      receivingLining_dB: 0,
      vibrationReductionIndex_dB: 7,
      separatingArea_m2: 10,
      junctionLength_m: 2.5,
    };
    const back = { ...path, sourceR_dB: 50, receivingR_dB: 40, sourceLining_dB: 0, receivingLining_dB: 3 };
    expect(flankingPathR_dB(path)).toBeCloseTo(45 + 3 + 7 + 10 * Math.log10(4), 12);
    expect(flankingPathR_dB(back)).toBe(flankingPathR_dB(path));
  });

  it('refuses areas and lengths that are not above 0, by name', () => {
    expect(() => flankingSimplified({ ...floor, area_m2: 0 }, [])).toThrow('separating area_m2 must be > 0, got 0');
    expect(() => flankingSimplified(floor, [{ ...wall, junctionLength_m: NaN }])).toThrow(
      'junctionLength_m of "north wall" must be > 0, got NaN',
    );
  });
});

describe('EN 12354-1:2000, Annex E: vibration reduction index (from memory, unverified)', () => {
  it.each<[Junction, JunctionPath, number, number, number]>([
    ['rigid cross', 'straight', 200, 200, 8.7],
    ['rigid cross', 'corner', 200, 200, 8.7],
    ['rigid cross', 'straight', 100, 200, 8.7 + 17.1 * 0.30103 + 5.7 * 0.0906],
    ['rigid T', 'straight', 200, 200, 5.7],
    ['rigid T', 'corner', 400, 200, 5.7 + 5.7 * 0.0906],
    ['rigid corner', 'corner', 200, 200, -2],
    ['rigid corner', 'corner', 100, 1000, 12],
    ['change of thickness', 'straight', 100, 100, -5],
    ['light facade', 'straight', 50, 500, 15],
    ['light facade', 'straight', 500, 50, 5],
    ['light facade', 'corner', 500, 50, 20],
  ])('%s, %s, %d against %d kg/m²: %d dB', (junction, path, mass_kg_m2, massAcross_kg_m2, K_dB) => {
    expect(vibrationReductionIndex_dB({ junction, path, mass_kg_m2, massAcross_kg_m2 })).toBeCloseTo(K_dB, 3);
  });

  it('around a corner it is the same both ways; some junctions lack a path', () => {
    const way = (a: number, b: number, junction: Junction) =>
      vibrationReductionIndex_dB({ junction, path: 'corner', mass_kg_m2: a, massAcross_kg_m2: b });
    for (const junction of ['rigid cross', 'rigid T', 'rigid corner'] as const) {
      expect(way(100, 350, junction)).toBeCloseTo(way(350, 100, junction), 12);
    }
    expect(way(100, 350, 'change of thickness')).toBeNaN();
  });
});

describe('EN 12354-2:2000, clause 4.3, simplified', () => {
  const { clause, verified, values } = PUBLISHED_TABLES.iso12354_2_K;

  it(`${clause}: K by the masses of floor and walls (${verified})`, () => {
    for (const [floorMass, row] of Object.entries(values.rows_floor_mass as Record<string, number[]>)) {
      row.forEach((K_dB, i) => {
        expect(impactFlankingCorrection_dB(Number(floorMass), values.mean_flanking_mass[i])).toBe(K_dB);
      });
    }
  });

  it('ISO 12354-2:2017 gives the same by formula, 0.6 + 5.5 lg(m′ floor/m′ walls), within a decibel (from memory)', () => {
    for (const [floorMass, row] of Object.entries(values.rows_floor_mass as Record<string, number[]>)) {
      row.forEach((K_dB, i) => {
        const formula = 0.6 + 5.5 * Math.log10(Number(floorMass) / values.mean_flanking_mass[i]);
        expect(Math.abs(Math.max(0, formula) - K_dB)).toBeLessThan(1);
      });
    }
  });

  it('L′n,w = 164 − 35 lg m′ − ΔLw + K: 345 kg/m² with 25 dB of covering over walls of 200 kg/m²', () => {
    const result = impactSimplified({ floorMass_kg_m2: 345, meanWallMass_kg_m2: 200, covering_dB: 25 });
    expect(result.flanking_dB).toBe(1);
    expect(result.Lnw_dB).toBeCloseTo(75.18 - 25 + 1, 2);
  });

  it('has no value without a mass, nor for joist floors', () => {
    expect(impactFlankingCorrection_dB(0, 100)).toBeNaN();
    expect(impactSimplified({ floorMass_kg_m2: 60, meanWallMass_kg_m2: 200 }).Lnw_dB).toBeNaN();
  });
});
