import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { BandMechanism, Mechanism, Prediction } from '#src/acoustics/prediction.ts';
import { predictionFrom } from '#src/acoustics/prediction-from.ts';
import { floors } from '../property/floors.ts';
import {
  cavity,
  covering,
  fibre,
  leaf,
  mat,
  REFERENCE_CONSTRUCTIONS,
  sheet,
} from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

const board = (thickness_m = 0.0127) => leaf([sheet('gypsum-board', thickness_m)]);
const plywood = () => leaf([sheet('plywood', 0.019)]);
const concrete = (thickness_m: number) => leaf([sheet('concrete', thickness_m)]);
const fill = [fibre('glass-fibre', 0.1)];
const hungOnHangers = { support: 'hangers', hangerResonance_Hz: 5, supportHeight_m: 0.1, fill } as const;
/** Hangers are 0.1 m high. */
const empty = (depth_m: number) => cavity({ joists: 'none', support: 'hangers', depth_m: depth_m - 0.1 });

const RESONANCES: readonly Mechanism[] = ['mass-spring-mass', 'coincidence', 'cavity-mode', 'bay-resonance'];

const HALL = { length_m: 40, width_m: 25 };

/** What rules R from one band to another. */
function rules(prediction: Prediction, from_Hz: number, to_Hz = from_Hz): readonly BandMechanism[] {
  return prediction.mechanisms.filter((_, i) => within(prediction.bands_Hz[i]!, from_Hz, to_Hz));
}

const within = (band_Hz: number, from_Hz: number, to_Hz: number) => band_Hz >= from_Hz && band_Hz <= to_Hz;

const named = (found: readonly BandMechanism[]) => new Set(found.map(({ mechanism }) => mechanism));

describe('a clear dip bears the name of what makes it', () => {
  test('mass-spring-mass: a ceiling on resilient channel, in the bottom of the dip too', () => {
    const p = predict(isolated(plywood(), cavity({ support: 'resilient-channel', fill }), board()));
    const f0_Hz = p.resonances_Hz.find(({ kind }) => kind === 'mass-spring-mass')!.frequency_Hz;
    const lowest_Hz = p.bands_Hz[p.R_dB.indexOf(Math.min(...p.R_dB))]!;
    expect(lowest_Hz).toBe(63);
    expect(rules(p, 63, 80)).toMatchObject([{ frequency_Hz: f0_Hz }, { frequency_Hz: f0_Hz }]);
    expect(named(rules(p, 63, 80))).toEqual(new Set(['mass-spring-mass']));
  });

  test.each([
    ['a pane of glass', leaf([sheet('glass', 0.006)]), {}, [2000, 2500]],
    ['a gypsum board', board(), {}, [2500, 4000]],
    // Hardly larger than the wave it would have no dip.
    ['the slab of a hall', concrete(0.1), HALL, [160, 250]],
    ['the slab of a hall in the lowest bands', concrete(0.25), HALL, [63, 100]],
  ] as const)('coincidence: %s, and mass beside it', (_, one, size, [from_Hz, to_Hz]) => {
    const p = predict({ ...isolated(one), ...size });
    const [fc] = p.criticalFrequencies_Hz;
    for (const [i, rule] of p.mechanisms.entries()) {
      const inside = within(p.bands_Hz[i]!, from_Hz, to_Hz);
      expect(rule, `${p.bands_Hz[i]} Hz`).toMatchObject(
        inside ? { mechanism: 'coincidence', frequency_Hz: fc!.frequency_Hz } : { mechanism: 'mass' },
      );
    }
  });

  test('bay resonance: boards screwed to joists on both sides', () => {
    const p = predict(isolated(board(), cavity({ depth_m: 0.09, fill }), board()));
    const bay = p.resonances_Hz.find(({ kind }) => kind === 'bay')!;
    expect(rules(p, 125)).toMatchObject([{ mechanism: 'bay-resonance', frequency_Hz: bay.frequency_Hz }]);
  });

  test('beside joists so far apart that the air is the stiffer spring: mass-spring-mass', () => {
    const p = predict(isolated(board(), cavity({ depth_m: 0.09, joistSpacing_m: 0.61 }), board()));
    const [lowest] = p.resonances_Hz.filter(({ kind }) => kind === 'mass-spring-mass');
    expect(rules(p, 100)).toMatchObject([{ mechanism: 'mass-spring-mass', frequency_Hz: lowest!.frequency_Hz }]);
  });

  test('cavity mode: an empty deep cavity, where half a wave fits and where waves of the slab meet it', () => {
    const light = predict(isolated(board(), empty(1.3), board()));
    expect(rules(light, 160)).toMatchObject([{ mechanism: 'cavity-mode', frequency_Hz: 343.2 / (2 * 1.3) }]);
    const heavy = predict(isolated(concrete(0.1), empty(0.7), board()));
    // 245/s and fc 182: the second half wave is met at 91 + √(91² + 490²) = 589 Hz.
    expect(named(rules(heavy, 630))).toEqual(new Set(['cavity-mode']));
    const filled = predict(isolated(board(), { ...empty(1.3), fill: [fibre('glass-fibre', 1.3)] }, board()));
    expect(named(filled.mechanisms)).not.toContain('cavity-mode');
  });

  test('of equal boards beside a cavity that rings as high: coincidence', () => {
    const { mechanisms, bands_Hz, criticalFrequencies_Hz } = predict(REFERENCE_CONSTRUCTIONS.w4);
    expect(mechanisms[bands_Hz.indexOf(2500)]).toMatchObject({
      mechanism: 'coincidence',
      frequency_Hz: criticalFrequencies_Hz[0]!.frequency_Hz,
    });
  });

  test('a floating floor: where it does worse than it would as one mass, even if R rises', () => {
    const p = predict(isolated(concrete(0.05), mat('mat', 0.02, 1e7), concrete(0.15)), { lowestBand_Hz: 20 });
    const f0_Hz = p.resonances_Hz.find(({ kind }) => kind === 'floating')!.frequency_Hz;
    expect(rules(p, 50)).toMatchObject([{ mechanism: 'mass-spring-mass', frequency_Hz: f0_Hz }]);
    const stiff = predict(REFERENCE_CONSTRUCTIONS.t5);
    expect(rules(stiff, 400)).toMatchObject([{ mechanism: 'mass-spring-mass', frequency_Hz: expect.closeTo(475, 0) }]);
  });
});

describe('a resonance without a dip rules nothing', () => {
  test.each([0.406, 0.3])(
    'a deck on joists every %d m over a ceiling on soft hangers, far from its bay resonance',
    (b) => {
      const p = predict(isolated(plywood(), cavity({ ...hungOnHangers, joistSpacing_m: b }), board()));
      expect(p.resonances_Hz.some(({ kind, frequency_Hz }) => kind === 'bay' && within(frequency_Hz, 300, 800))).toBe(
        true,
      );
      expect(named(rules(p, 63, 800))).toEqual(new Set(['double-leaf']));
    },
  );

  test('reference row a1: R climbs through the critical frequencies of 206 and 335 Hz', () => {
    const p = predict(REFERENCE_CONSTRUCTIONS.a1);
    expect(named(rules(p, 100, 400))).toEqual(new Set(['double-leaf']));
  });

  test('the example of a stack file: 100 Hz on the rise behind its f0', () => {
    const slab = sheet('cellular-concrete', 0.038, { density_kg_m3: 1760 });
    const joists = cavity({ support: 'resilient-channel', joistSpacing_m: 0.4064, fill: [fibre('glass-fibre', 0.09)] });
    const p = predict(isolated(leaf([slab, sheet('plywood', 0.019)]), joists, board(0.0159)));
    expect(named(rules(p, 50, 80))).toEqual(new Set(['mass-spring-mass']));
    expect(named(rules(p, 100, 250))).toEqual(new Set(['double-leaf']));
  });

  // Both curves are held to the computed R itself, not to how the dips were found.
  test.each(Object.entries(REFERENCE_CONSTRUCTIONS))(
    '%s: no band that rises as smoothly as its neighbours bears one, unless the floor does worse than one leaf of its sheets',
    (_, construction) => {
      const p = predict(construction);
      const direct = p.paths_dB.direct!;
      const single = predict(asOneLeaf(construction)).paths_dB.direct!;
      p.mechanisms.forEach(({ mechanism }, i) => {
        if (!RESONANCES.includes(mechanism) || i === 0) return;
        const falls = direct.slice(Math.max(i - 3, 0), i).some((before) => before > direct[i]!);
        const sags = i + 1 < direct.length && direct[i - 1]! + direct[i + 1]! > 2 * direct[i]! + 2;
        const worse = direct[i]! < single[i]!;
        expect(falls || sags || worse, `${p.bands_Hz[i]} Hz: ${mechanism}`).toBe(true);
      });
    },
  );
});

describe('what rules impact sound', () => {
  const rulesLn = (construction: Construction, from_Hz: number, to_Hz = from_Hz) => {
    const p = predict(construction, { lowestBand_Hz: 20 });
    return p.impactMechanisms.filter((_, i) => within(p.bands_Hz[i]!, from_Hz, to_Hz));
  };

  it('is on bare concrete how far the slab gives way, whose surface does not', () => {
    expect(named(rulesLn(isolated(concrete(0.15)), 20, 5000))).toEqual(new Set(['mobility']));
  });

  it('is on carpet the carpet, from where it takes half of the force', () => {
    const floor = { ...isolated(concrete(0.15)), covering: covering('carpet') };
    expect(named(rulesLn(floor, 20, 80))).toEqual(new Set(['mobility']));
    const carpet = rulesLn(floor, 250, 5000);
    expect(named(carpet)).toEqual(new Set(['hammer-contact']));
    const bare = predict(isolated(concrete(0.15))).Ln_dB;
    const covered = predict(floor);
    // What it takes of the force is what it takes of the level.
    covered.impactMechanisms.forEach(({ mechanism, effect_dB }, i) => {
      if (mechanism === 'hammer-contact') expect(bare[i]! - covered.Ln_dB[i]!).toBeCloseTo(effect_dB!, -0.3);
    });
  });

  it('is the resonance of a floating floor where Ln has its peak', () => {
    const p = predict(REFERENCE_CONSTRUCTIONS.a3);
    const [peak] = p.bands_Hz.filter((_, i) => p.Ln_dB[i] === Math.max(...p.Ln_dB));
    expect(p.impactMechanisms[p.bands_Hz.indexOf(peak!)]).toMatchObject({
      mechanism: 'mass-spring-mass',
      frequency_Hz: expect.closeTo(157, 0),
    });
  });

  it('is coincidence in the peak of a thin pane', () => {
    expect(named(rulesLn(isolated(leaf([sheet('glass', 0.006)])), 2000, 2500))).toEqual(new Set(['coincidence']));
  });

  it('is the way through the supports where most of it goes there', () => {
    const floor = isolated(plywood(), cavity({ support: 'resilient-channel', fill }), board());
    expect(
      rulesLn(floor, 500, 2000).every(({ path, mechanism }) => path === 'supports' && mechanism === 'supports'),
    ).toBe(true);
  });
});

it('is flanking where nothing else comes through, and the share says so', () => {
  const floor = isolated(concrete(0.3), mat('mat', 0.02, 1e7), concrete(0.3));
  const p = predict({ ...floor, flanking: { R500_dB: 40, slope_dB_per_octave: 0 } });
  const last = p.mechanisms.at(-1)!;
  expect(last.mechanism).toBe('flanking');
  expect(last.share).toBeGreaterThan(0.99);
  expect(p.R_dB.at(-1)!).toBeCloseTo(40, 1);
});

it('is the same whether or not bands below 50 Hz were asked for', () => {
  fc.assert(
    fc.property(floors('real'), (floor) => {
      const { mechanisms, impactMechanisms } = predictionFrom(predict(floor, { lowestBand_Hz: 20 }), 50);
      expect({ mechanisms, impactMechanisms }).toEqual(pick(predict(floor)));
    }),
    { numRuns: 40, seed: 7, endOnFailure: true },
  );
});

it('the share is that of the path in all energy', () => {
  const p = predict(REFERENCE_CONSTRUCTIONS.f2);
  p.mechanisms.forEach(({ path, share }, i) => {
    expect(share).toBeCloseTo(10 ** ((p.R_dB[i]! - p.paths_dB[path]![i]!) / 10), 9);
  });
});

function pick({ mechanisms, impactMechanisms }: Prediction): Pick<Prediction, 'mechanisms' | 'impactMechanisms'> {
  return { mechanisms, impactMechanisms };
}

/** All sheets of a floor on each other. */
function asOneLeaf({ layers, length_m, width_m }: Construction): Construction {
  const sheets = layers.flatMap((layer) => (layer.kind === 'leaf' ? layer.sheets : []));
  return { length_m, width_m, layers: [leaf(sheets)] };
}
