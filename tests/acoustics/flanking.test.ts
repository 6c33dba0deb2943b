import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Construction, ConstructionLayer, FlankingWall, WallJunction } from '#src/acoustics/construction.ts';
import { flankingOf } from '#src/acoustics/flanking.ts';
import { predict } from '#src/acoustics/predict.ts';
import { rw } from '#src/acoustics/ratings/rw.ts';
import { HOMOGENEOUS_MATERIALS } from '#src/acoustics/standards/iso-12354-1-materials.ts';
import { flankingByBand_dB } from '#src/acoustics/standards/iso-12354-1-simplified.ts';
import { impactFlankingCorrection_dB } from '#src/acoustics/standards/iso-12354-2-simplified.ts';
import { lightJunctionK_dB } from '#src/acoustics/standards/light-junction.ts';
import { vibrationReductionIndex_dB } from '#src/acoustics/standards/vibration-reduction.ts';
import { wallReduction_dB } from '#src/acoustics/wall-reduction.ts';
import { cavity, leaf, mat, sheet } from '../published/reference-constructions.ts';

const floor = (...layers: ConstructionLayer[]): Construction => ({ length_m: 4, width_m: 2.5, layers });
const slab = (thickness_m: number) => leaf([sheet('concrete', thickness_m)]);
const deck = leaf([sheet('osb', 0.0183)]);
const board = leaf([sheet('gypsum-board', 0.0159)]);
const joistFloor = floor(deck, cavity({ support: 'resilient-channel' }), board);

function rated(Rw_dB: number, changes: Partial<FlankingWall> = {}): FlankingWall {
  return {
    name: 'north wall',
    junctionLength_m: 4,
    height_m: 2.5,
    surfaceMass_kg_m2: 250,
    reduction: { kind: 'rated', Rw_dB },
    junction: { kind: 'cross' },
    ...changes,
  };
}

function masonry(material: keyof typeof HOMOGENEOUS_MATERIALS, thickness_m: number, junction: WallJunction['kind']) {
  const { density_kg_m3, longitudinalSpeed_m_s, internalLossFactor } = HOMOGENEOUS_MATERIALS[material];
  return rated(0, {
    surfaceMass_kg_m2: density_kg_m3 * thickness_m,
    reduction: { kind: 'homogeneous', thickness_m, longitudinalSpeed_m_s, internalLossFactor },
    junction: { kind: junction } as WallJunction,
  });
}

/** The same wall when nothing but its mass and the rating of its spectrum are known. */
function byRating(wall: FlankingWall): FlankingWall {
  const { bands_Hz } = predict(joistFloor);
  const { Rw: Rw_dB } = rw({ bands_Hz, values_dB: wallReduction_dB(wall, bands_Hz) });
  return { ...wall, reduction: { kind: 'rated', Rw_dB } };
}

const withWalls = (construction: Construction, ...walls: FlankingWall[]): Construction => ({
  ...construction,
  flanking: { walls },
});

describe('sound around a bare slab', () => {
  it('is that of EN 12354-1:2000 by another route, band by band', () => {
    const wall = rated(52, { surfaceMass_kg_m2: 300, junction: { kind: 'cross' } });
    const bare = floor(slab(0.15));
    const { R_dB, bands_Hz } = predict(bare);
    const K_dB = (path: 'straight' | 'corner') =>
      vibrationReductionIndex_dB({ junction: 'rigid cross', path, mass_kg_m2: 300, massAcross_kg_m2: 345 });
    const R = wallReduction_dB(wall, bands_Hz);
    const expected = flankingByBand_dB({
      separating: { area_m2: 10, R_dB },
      flanking: [
        {
          name: 'north wall',
          sourceR_dB: R,
          receivingR_dB: R,
          sourceArea_m2: 10,
          receivingArea_m2: 10,
          junctionLength_m: 4,
          straightK_dB: K_dB('straight'),
          cornerK_dB: K_dB('corner'),
        },
      ],
    });
    predict(withWalls(bare, wall)).R_dB.forEach((value, i) => {
      expect(value).toBeCloseTo(expected[i]!, 9);
    });
  });

  it('asks for no other prediction than the floor itself', () => {
    const asked: Construction[] = [];
    flankingOf(withWalls(floor(slab(0.15)), rated(50)), [500], (part) => {
      asked.push(part);
      return predict(part);
    })!(0, { R_dB: 50, Ln_dB: 70 });
    expect(asked).toEqual([]);
  });

  const MASONRY = [
    [0.1, 'autoclaved aerated concrete', 0.25],
    [0.15, 'calcium-silicate blocks', 0.115],
    [0.15, 'concrete', 0.15],
    [0.2, 'calcium-silicate blocks', 0.24],
    [0.2, 'lightweight concrete', 0.15],
  ] as const;

  it.each(
    MASONRY.flatMap((masonry) =>
      (['computed', 'known by mass and Rw alone'] as const).map((how) => [...masonry, how] as const),
    ),
  )(
    'adds to impact what EN 12354-2:2000, table 1 adds, within 2 dB: %d m of concrete on walls of %s, %d m, %s',
    (thickness_m, material, wall_m, how) => {
      const bare = { ...floor(slab(thickness_m)), length_m: 4, width_m: 4 };
      const described = (junction: WallJunction['kind']) => {
        const wall = masonry(material, wall_m, junction);
        return how === 'computed' ? wall : byRating(wall);
      };
      const [wall, facade] = [described('cross'), described('tee')];
      const around = predict(withWalls(bare, wall, wall, facade, facade));
      const added = around.ratings.Lnw - predict(bare).ratings.Lnw;
      const K_dB = impactFlankingCorrection_dB(2300 * thickness_m, wall.surfaceMass_kg_m2);
      expect(Math.abs(added - K_dB), `${added} against ${K_dB}`).toBeLessThanOrEqual(2);
    },
  );
});

describe('linings of the floor', () => {
  const wall = masonry('concrete', 0.15, 'cross');
  const structure = slab(0.15);
  const hung = floor(structure, cavity({ joists: 'none', depth_m: 0.15, support: 'hangers' }), board);
  const floating = floor(leaf([sheet('cement-screed', 0.05)]), mat('mineral wool', 0.02, 1e7), structure);
  const at1000 = (construction: Construction) => {
    const { bands_Hz, paths_dB, impactPaths_dB } = predict(withWalls(construction, wall));
    const band = bands_Hz.indexOf(1000);
    return { R: paths_dB.flanking![band]!, Ln: impactPaths_dB.flanking![band]! };
  };

  it('a hung ceiling leaves impact by the walls as it is, a floating floor takes it away', () => {
    const bare = at1000(floor(structure));
    expect(at1000(hung).Ln).toBeCloseTo(bare.Ln, 6);
    expect(at1000(floating).Ln).toBeLessThan(bare.Ln - 10);
  });

  it('each closes one way of three: the gain by the walls stays below that of all three together', () => {
    const bare = at1000(floor(structure)).R;
    for (const lined of [hung, floating]) {
      expect(at1000(lined).R).toBeGreaterThan(bare);
      expect(at1000(lined).R).toBeLessThan(bare + 10 * Math.log10(3));
    }
  });
});

describe('a joist floor between masonry walls', () => {
  const wall = masonry('calcium-silicate blocks', 0.24, 'joists');

  it('counts as one light element, with nothing else to predict', () => {
    const prediction = predict(withWalls(joistFloor, wall));
    const plain = predict(joistFloor);
    expect(prediction.paths_dB.direct).toEqual(plain.paths_dB.direct);
    prediction.R_dB.forEach((R, i) => {
      expect(R).toBeLessThan(plain.R_dB[i]!);
    });
  });

  it('loses more with every wall, and less by better ones', () => {
    const one = predict(withWalls(joistFloor, rated(45))).ratings.Rw;
    expect(predict(withWalls(joistFloor, rated(45), rated(45))).ratings.Rw).toBeLessThanOrEqual(one);
    expect(predict(withWalls(joistFloor, rated(60))).ratings.Rw).toBeGreaterThan(one);
  });

  it('no wall at all is no flanking', () => {
    expect(predict(withWalls(joistFloor))).toEqual(predict(joistFloor));
  });
});

describe('a wall known by its mass and rating', () => {
  const { bands_Hz } = predict(joistFloor);

  it.each([30, 45, 57.5, 70].flatMap((Rw_dB) => [10, 60, 250, 700].map((mass) => [Rw_dB, mass] as const)))(
    'has a spectrum of that rating: Rw %d dB, %d kg/m²',
    (Rw_dB, surfaceMass_kg_m2) => {
      const wall = rated(Rw_dB, { surfaceMass_kg_m2 });
      expect(rw({ bands_Hz, values_dB: wallReduction_dB(wall, bands_Hz) }).Rw).toBe(Math.floor(Rw_dB));
    },
  );

  it.each([150, 200, 300, 400, 500])(
    'of %d kg/m² and the Rw of its mass, 37.5 lg m − 42 (EN 12354-1:2000, Annex B, from memory), is within 2 dB of the wall computed',
    (mass) => {
      const { density_kg_m3 } = HOMOGENEOUS_MATERIALS['calcium-silicate blocks'];
      const computed = wallReduction_dB(masonry('calcium-silicate blocks', mass / density_kg_m3, 'cross'), bands_Hz);
      const known = wallReduction_dB(rated(37.5 * Math.log10(mass) - 42, { surfaceMass_kg_m2: mass }), bands_Hz);
      known.forEach((R_dB, i) => {
        expect(Math.abs(R_dB - computed[i]!), `${bands_Hz[i]} Hz`).toBeLessThan(2);
      });
    },
  );

  it('around a slab with a ceiling below lets as much impact pass as the same walls computed, within 2 dB', () => {
    const hung = floor(slab(0.15), cavity({ joists: 'none', depth_m: 0.15, support: 'hangers' }), board);
    const walls = [0.115, 0.175, 0.24].map((wall_m) => masonry('calcium-silicate blocks', wall_m, 'cross'));
    for (const wall of walls) {
      const computed = predict(withWalls(hung, wall, wall, wall, wall));
      const known = predict(withWalls(hung, ...Array(4).fill(byRating(wall))));
      expect(Math.abs(known.ratings.Lnw - computed.ratings.Lnw)).toBeLessThanOrEqual(2);
      // Not the contour's fall of 9 dB per octave below 100 Hz, which no wall has.
      for (const band_Hz of [50, 63, 80]) {
        const i = bands_Hz.indexOf(band_Hz);
        const difference = known.paths_dB.flanking![i]! - computed.paths_dB.flanking![i]!;
        expect(Math.abs(difference), `${band_Hz} Hz`).toBeLessThan(2);
      }
    }
  });
});

describe('EN 12354-1:2000, Annex E, light element at a heavy one (from memory, unverified)', () => {
  const at = (heavy_kg_m2: number, frequency_Hz = 500) =>
    (['straight', 'corner'] as const).map((path) =>
      lightJunctionK_dB({ path, heavy_kg_m2, light_kg_m2: 30, frequency_Hz }),
    );

  it('3 − 14.1 M + 5.7 M² straight on and 10 + 10 |M| around the corner, by hand for a fourfold mass', () => {
    expect(at(120)[0]).toBeCloseTo(3 - 14.1 * 0.60206 + 5.7 * 0.60206 ** 2, 4);
    expect(at(120)[1]).toBeCloseTo(16.0206, 4);
    expect(at(120, 5000)[1]).toBeCloseTo(19.3206, 4);
  });

  it('straight on it stays within −4 and 0 and never rises with the heavy mass', () => {
    const values = [10, 30, 90, 200, 400, 1000, 3000, 10_000].map((m) => at(m)[0]!);
    expect(values).toEqual(values.toSorted((a, b) => b - a));
    expect(Math.max(...values)).toBeLessThanOrEqual(0);
    expect(Math.min(...values)).toBeGreaterThanOrEqual(-4);
  });
});

it('every accepted wall gives finite numbers that never exceed those without it', () => {
  const plain = predict(joistFloor, { lowestBand_Hz: 20 });
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 100, noNaN: true }),
      fc.double({ min: 0.3, max: 100, noNaN: true }),
      fc.double({ min: 1, max: 10_000, noNaN: true }),
      fc.constantFrom('cross', 'tee', 'light-facade', 'joists'),
      fc.oneof(
        fc.record({ kind: fc.constant('rated' as const), Rw_dB: fc.double({ min: 0, max: 150, noNaN: true }) }),
        fc.record({
          kind: fc.constant('homogeneous' as const),
          thickness_m: fc.double({ min: 0.01, max: 5, noNaN: true }),
          longitudinalSpeed_m_s: fc.double({ min: 100, max: 10_000, noNaN: true }),
          internalLossFactor: fc.double({ min: 1e-4, max: 2, noNaN: true }),
        }),
      ),
      (junctionLength_m, height_m, surfaceMass_kg_m2, kind, reduction) => {
        const wall = { name: '', junctionLength_m, height_m, surfaceMass_kg_m2, junction: { kind }, reduction };
        const { R_dB, Ln_dB } = predict(withWalls(joistFloor, wall as FlankingWall), { lowestBand_Hz: 20 });
        R_dB.forEach((R, i) => {
          expect(Number.isFinite(R)).toBe(true);
          expect(R).toBeLessThanOrEqual(plain.R_dB[i]! + 1e-9);
          expect(Number.isFinite(Ln_dB[i])).toBe(true);
          expect(Ln_dB[i]).toBeGreaterThanOrEqual(plain.Ln_dB[i]! - 1e-9);
        });
      },
    ),
    { numRuns: 150 },
  );
});
