import { describe, expect, test } from 'vitest';
import { pathShares } from '#cells/paths/path-shares.ts';
import { pathsView, sharesCsv } from '#cells/paths/paths-view.ts';
import { bandsInWords, regionSentence, type SentenceContext } from '#cells/paths/region-sentences.ts';
import { type Region, regionsOf } from '#cells/paths/regions.ts';
import type { SupportKind } from '#src/acoustics/construction.ts';
import type { PathName, Prediction } from '#src/acoustics/prediction.ts';
import { PATH_MARKS } from '#src/charts/path-marks.ts';
import type { Notebook, PathsCell } from '#src/notebook/types.ts';
import { BANDS_HZ, madeUpPrediction } from '../../charts/made-up-prediction.ts';
import { percussionNotebook } from '../../charts/percussion-notebook.ts';

describe('shares', () => {
  test('of every band add up to one', () => {
    for (const sound of ['airborne', 'impact'] as const) {
      const shares = pathShares(madeUpPrediction(), sound);
      BANDS_HZ.forEach((_, i) => {
        expect(shares.reduce((sum, p) => sum + p.shares[i]!, 0)).toBeCloseTo(1, 12);
      });
    }
  });

  test('follow the energy: 10 dB less R is ten times the energy', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), supports: BANDS_HZ.map(() => 40) };
    const [direct, supports] = pathShares(madeUpPrediction(45, { paths_dB: levels }), 'airborne');
    expect(direct!.shares[0]).toBeCloseTo(1 / 11, 12);
    expect(supports!.shares[0]).toBeCloseTo(10 / 11, 12);
  });

  test('of impact follow the level: the louder path has more', () => {
    const [direct, supports] = pathShares(madeUpPrediction(), 'impact');
    expect(direct!.shares[4]).toBeGreaterThan(supports!.shares[4]!);
  });

  test('survive levels far beyond what energies can hold', () => {
    const levels = { direct: BANDS_HZ.map(() => 5000), supports: BANDS_HZ.map(() => 5003) };
    const [direct] = pathShares(madeUpPrediction(45, { paths_dB: levels }), 'airborne');
    expect(direct!.shares[0]).toBeCloseTo(1 / (1 + 10 ** -0.3), 9);
  });

  test('a path without a value in a band leaves every share of that band unknown', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), leaks: BANDS_HZ.map((_, i) => (i === 0 ? NaN : 50)) };
    const shares = pathShares(madeUpPrediction(45, { paths_dB: levels }), 'airborne');
    expect(shares.map((p) => p.shares[0])).toEqual([NaN, NaN]);
    expect(shares.map((p) => p.shares[1])).toEqual([0.5, 0.5]);
  });

  test('a path that lets nothing through has no share', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), leaks: BANDS_HZ.map(() => Infinity) };
    const shares = pathShares(madeUpPrediction(45, { paths_dB: levels }), 'airborne');
    expect(shares.map((p) => p.shares[0])).toEqual([1, 0]);
  });
});

describe('regions', () => {
  test('join consecutive bands that the same thing rules, and cover every band once', () => {
    const prediction = madeUpPrediction();
    const regions = regionsOf(prediction, 'airborne');
    expect(regions.map((r) => r.mechanism)).toEqual(
      prediction.mechanisms.map((m) => m.mechanism).filter((m, i, all) => m !== all[i - 1]),
    );
    expect(regions.flatMap(({ first, last }) => BANDS_HZ.slice(first, last + 1))).toEqual([...BANDS_HZ]);
  });

  test('the same mechanism at another frequency is another region', () => {
    const mechanisms = BANDS_HZ.map((_, i) => ({
      path: 'direct' as const,
      share: 1,
      mechanism: 'coincidence' as const,
      frequency_Hz: i < 10 ? 1300 : 2500,
    }));
    const prediction = madeUpPrediction(45, { mechanisms });
    expect(regionsOf(prediction, 'airborne').map((r) => r.frequency_Hz)).toEqual([1300, 2500]);
  });

  test('of impact go by what rules impact sound', () => {
    expect(regionsOf(madeUpPrediction(), 'impact')).toEqual([
      { first: 0, last: 2, path: 'direct', mechanism: 'mobility' },
      { first: 3, last: 11, path: 'direct', mechanism: 'double-leaf', frequency_Hz: 62 },
      { first: 12, last: 20, path: 'direct', mechanism: 'hammer-contact', frequency_Hz: 600 },
    ]);
  });
});

describe('sentences', () => {
  test.each([
    [0, 2, 'Up to 80 Hz'],
    [3, 5, 'From 100 to 160 Hz'],
    [5, 5, 'At 160 Hz'],
    [17, 20, 'From 2500 Hz up'],
    [0, 20, 'In all bands'],
  ])('bands %d to %d read "%s"', (first, last, words) => {
    expect(bandsInWords({ first, last }, BANDS_HZ)).toBe(words);
  });

  function sentence(
    region: Region,
    changes: Partial<Prediction> = {},
    flankingIsFixed = true,
    more: Partial<SentenceContext> = {},
  ): string {
    const prediction = madeUpPrediction(45, changes);
    return regionSentence(region, {
      prediction,
      shares: pathShares(prediction, 'airborne'),
      sound: 'airborne',
      units: 'SI',
      flankingIsFixed,
      ...more,
    });
  }

  /** A resonance that does as much in each band of a region, from the first on. */
  const doing = (effects_dB: readonly number[], region: Region) =>
    BANDS_HZ.map((_, i) => {
      const { path, mechanism } = region;
      const effect_dB = effects_dB[i - region.first];
      return { path, share: 1, mechanism, ...(effect_dB === undefined ? {} : { effect_dB }) };
    });

  test('a mass-spring-mass resonance bears its name, its f0 and what it does in the band where it does most', () => {
    const R_dB = BANDS_HZ.map((_, i) => (i === 1 ? 12.34 : 20 + i));
    const region = { first: 0, last: 2, path: 'direct', mechanism: 'mass-spring-mass', frequency_Hz: 62 } as const;
    const name = 'deck and ceiling bounce on the air: f0 = 62 Hz';
    expect(sentence(region, { R_dB })).toBe(`Up to 80 Hz ${name}.`);
    expect(sentence(region, { R_dB, mechanisms: doing([2, 6.4, 3], region) })).toBe(
      `Up to 80 Hz ${name}; R is 12.3 dB at 63 Hz, about 6 dB lower for it.`,
    );
    const one = { ...region, first: 1, last: 1 };
    expect(sentence(one, { R_dB, mechanisms: doing([6.4], one) })).toBe(
      `At 63 Hz ${name}; R is 12.3 dB, about 6 dB lower for it.`,
    );
  });

  test('under impact a resonance makes Ln higher', () => {
    const region = { first: 0, last: 2, path: 'direct', mechanism: 'mass-spring-mass', frequency_Hz: 62 } as const;
    const Ln_dB = BANDS_HZ.map(() => 71);
    expect(
      sentence(region, { Ln_dB, impactMechanisms: doing([2, 6.4, 3], region) }, true, { sound: 'impact' }),
    ).toMatch(/: f0 = 62 Hz; Ln is 71\.0 dB at 63 Hz, about 6 dB higher for it\.$/);
  });

  test('a surface that gives way bears the resonance of the hammers on it and the force that it takes', () => {
    const Ln_dB = BANDS_HZ.map((_, i) => 80 - 3 * i);
    const region = { first: 10, last: 12, path: 'direct', mechanism: 'hammer-contact', frequency_Hz: 107 } as const;
    expect(
      sentence(region, { Ln_dB, impactMechanisms: doing([4.6, 9, 18.2], region) }, true, { sound: 'impact' }),
    ).toBe(
      'From 500 to 800 Hz the surface gives way under the hammers, which resonate on it at 107 Hz: 5 to 18 dB less force than on a rigid one; Ln falls by 9 dB per octave.',
    );
  });

  test('mobility bears the mass and the slope of Ln', () => {
    const Ln_dB = BANDS_HZ.map((_, i) => 60 + i);
    const region = { first: 0, last: 8, path: 'direct', mechanism: 'mobility' } as const;
    expect(sentence(region, { Ln_dB, surfaceMass_kg_m2: 345 }, true, { sound: 'impact' })).toBe(
      'Up to 315 Hz the blows shake the floor as far as its mass and stiffness let them: 345 kg/m²; Ln rises by 3 dB per octave.',
    );
  });

  const bounce = (frequency_Hz: number) => ({ frequency_Hz, name: 'made up', kind: 'mass-spring-mass' as const });
  const across = (frequency_Hz: number, name = 'half a wavelength fits between the leaves') => ({
    frequency_Hz,
    name,
    kind: 'cavity' as const,
  });

  test.each([
    ['one spring', [31], 'the leaves move each on its own, above f0 = 31 Hz'],
    ['two springs, above both', [31, 70], 'the leaves move each on its own, above every f0 (31 Hz to 70 Hz)'],
    [
      'two springs, between them',
      [31, 900],
      'some leaves move on their own, others still together: between f0 = 31 Hz and f0 = 900 Hz',
    ],
    [
      'four springs, between the second and the third',
      [20, 31, 900, 1200],
      'some leaves move on their own, others still together: between f0 = 31 Hz and f0 = 900 Hz',
    ],
  ])('which leaves move on their own depends on every f0: %s', (_name, bounces_Hz, words) => {
    const region = {
      first: 3,
      last: 4,
      path: 'direct',
      mechanism: 'double-leaf',
      frequency_Hz: bounces_Hz[0]!,
    } as const;
    expect(sentence(region, { resonances_Hz: bounces_Hz.map(bounce) })).toBe(`From 100 to 125 Hz ${words}.`);
  });

  test('a cavity bears the frequency at which half a wavelength fits, and the leaves where there are several', () => {
    const region = { first: 0, last: 2, path: 'direct', mechanism: 'cavity-mode', frequency_Hz: 57 } as const;
    const words = 'half a wavelength fits between the leaves at 57 Hz';
    expect(sentence(region, { resonances_Hz: [bounce(16), across(57)] })).toBe(
      `Up to 80 Hz the air in the cavity resonates: ${words}.`,
    );
    const above = { ...region, first: 4, last: 4 };
    expect(sentence(above, { resonances_Hz: [bounce(16), across(57)] })).toBe(
      `At 125 Hz the air in the cavity resonates: ${words}, several halves and slanting waves higher up.`,
    );
    const several = [across(57, 'half a wavelength fits between leaf 3 and the lower leaf'), across(600)];
    expect(sentence(region, { resonances_Hz: several })).toBe(
      'Up to 80 Hz the air in a cavity resonates: half a wavelength fits between leaf 3 and the lower leaf at 57 Hz.',
    );
  });

  test('a board between its fastenings bears its resonance, which may lie beside the bands it rules', () => {
    const resonances_Hz = [
      { frequency_Hz: 344, name: 'the upper leaf swings between its fastenings', kind: 'bay' as const },
    ];
    const region = { first: 7, last: 8, path: 'direct', mechanism: 'bay-resonance', frequency_Hz: 344 } as const;
    expect(sentence(region, { resonances_Hz })).toBe(
      'From 250 to 315 Hz the upper leaf swings between its fastenings: resonance at 344 Hz.',
    );
  });

  test.each([
    ['bay-resonance', 63.7, 'the upper leaf swings between its fastenings: resonance at 64 Hz'],
    ['mass-spring-mass', 63.45, 'the leaves bounce on the air: f0 = 63 Hz'],
  ] as const)(
    'of two frequencies that lie close the one of the kind is named: %s',
    (mechanism, frequency_Hz, words) => {
      const resonances_Hz = [
        { frequency_Hz: 63.45, name: 'the leaves bounce on the air', kind: 'mass-spring-mass' as const },
        { frequency_Hz: 63.7, name: 'the upper leaf swings between its fastenings', kind: 'bay' as const },
      ];
      const region = { first: 1, last: 1, path: 'direct', mechanism, frequency_Hz } as const;
      const text = `At 63 Hz ${words}.`;
      expect(sentence(region, { resonances_Hz })).toBe(text);
      expect(sentence(region, { resonances_Hz: [...resonances_Hz].reverse() })).toBe(text);
    },
  );

  test('of several of a kind the nearest is named', () => {
    const resonances_Hz = [
      { frequency_Hz: 63.5, name: 'the upper leaf swings between its fastenings', kind: 'bay' as const },
      { frequency_Hz: 63.7, name: 'the lower leaf swings between its fastenings', kind: 'bay' as const },
    ];
    const region = { first: 1, last: 1, path: 'direct', mechanism: 'bay-resonance', frequency_Hz: 63.7 } as const;
    expect(sentence(region, { resonances_Hz })).toContain('the lower leaf');
  });

  test('mass bears the mass and the slope that the bands have', () => {
    const R_dB = BANDS_HZ.map((_, i) => 20 + 2 * i);
    const region = { first: 3, last: 8, path: 'direct', mechanism: 'mass' } as const;
    expect(sentence(region, { R_dB, surfaceMass_kg_m2: 92 })).toBe(
      'From 100 to 315 Hz the floor moves as one, and its mass holds the sound back: 92 kg/m²; R rises by 6 dB per octave.',
    );
  });

  test.each([
    [-1 / 3, 'falls by 1 dB per octave instead of rising by 6, so near to the resonance at 144 Hz'],
    [1, 'rises by 3 dB per octave instead of rising by 6, so near to the resonance at 144 Hz'],
    [0, 'stays level instead of rising by 6, so near to the resonance at 144 Hz'],
    [4 / 3, 'rises by 4 dB per octave'],
  ])('mass by %d dB a third names the resonance that keeps it from its 6 dB per octave', (perBand_dB, words) => {
    const R_dB = BANDS_HZ.map((_, i) => 20 + perBand_dB * i);
    const resonances_Hz = [187, 144, 31].map((frequency_Hz) => ({
      frequency_Hz,
      name: 'made up',
      kind: 'mass-spring-mass' as const,
    }));
    const region = { first: 0, last: 3, path: 'direct', mechanism: 'mass' } as const;
    expect(sentence(region, { R_dB, resonances_Hz })).toMatch(new RegExp(`; R ${words}\\.$`));
  });

  test('coincidence bears the leaf, its fc and what it does', () => {
    const criticalFrequencies_Hz = [
      { frequency_Hz: 732, name: 'the upper leaf: bending waves as fast as sound', kind: 'critical' as const },
    ];
    const R_dB = BANDS_HZ.map((_, i) => (i === 12 ? 40 : 50));
    const region = { first: 11, last: 12, path: 'direct', mechanism: 'coincidence', frequency_Hz: 732 } as const;
    expect(sentence(region, { R_dB, criticalFrequencies_Hz, mechanisms: doing([3, 10], region) })).toBe(
      'From 630 to 800 Hz bending waves in the upper leaf run as fast as sound: fc = 732 Hz; R is 40.0 dB at 800 Hz, about 10 dB lower for it.',
    );
  });

  test('the supports bear their share and what closing them would gain', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), supports: BANDS_HZ.map(() => 40) };
    const region = { first: 10, last: 12, path: 'supports', mechanism: 'supports' } as const;
    // 10 of 11 parts: 91 %; without them 10 lg 11 = 10.4 dB.
    expect(sentence(region, { paths_dB: levels })).toBe(
      'From 500 to 800 Hz the largest part of the sound goes through what holds the ceiling: 91 %; closing this path gains 10 dB.',
    );
  });

  test('closing a path that rules many bands gains little in some and more than can be built in others', () => {
    // 10 lg(1 + 10^(d/10)) for direct sound d dB weaker: 2.1 dB at −2 dB, 33.0 dB at 33 dB.
    const supports = BANDS_HZ.map(() => 40);
    const levels = { direct: BANDS_HZ.map((_, i) => 38 + 35 * (i / 20)), supports };
    const region = { first: 0, last: 20, path: 'supports', mechanism: 'supports' } as const;
    expect(sentence(region, { paths_dB: levels })).toMatch(
      /; closing this path gains 2 to 33 dB, most at 5000 Hz; more than about 15 dB can hardly be built or measured, because sound then finds another way\.$/,
    );
    expect(sentence({ ...region, last: 9 }, { paths_dB: levels })).toMatch(
      /; closing this path gains 2 to 14 dB, most at 400 Hz\.$/,
    );
  });

  test('a ceiling on joists of its own is held by nothing: common bearings are its limit, and nothing is there to close', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), supports: BANDS_HZ.map(() => 40) };
    const region = { first: 10, last: 12, path: 'supports', mechanism: 'supports' } as const;
    expect(sentence(region, { paths_dB: levels }, true, { support: 'separate-joists' })).toBe(
      'From 500 to 800 Hz the largest part of the sound goes through common bearings, the walls in which both floor and ceiling rest: 91 %; how much crosses there is assumed, a share of the edges, and a ceiling on joists of its own cannot do better than that.',
    );
  });

  test('of impact sound to a ceiling on joists of its own is said that common bearings are not counted', () => {
    const [lowest, next] = regionsOf(madeUpPrediction(), 'impact');
    const said = (region: Region, support: SupportKind) => sentence(region, {}, true, { support, sound: 'impact' });
    const words = '; what impact sound crosses in common bearings is not counted';
    expect(said(lowest!, 'clips')).not.toContain(words);
    expect(said(lowest!, 'separate-joists')).toContain(`${words}.`);
    expect(said(next!, 'separate-joists'), 'said once').not.toContain(words);
  });

  test('where next to nothing takes another way, no gain is promised', () => {
    const levels = { direct: BANDS_HZ.map(() => 250), leaks: BANDS_HZ.map(() => 10) };
    const region = { first: 0, last: 20, path: 'leaks', mechanism: 'leak' } as const;
    expect(sentence(region, { paths_dB: levels })).toMatch(
      /^In all bands the largest part of the sound goes through gaps and holes: [> \d]+%\.$/,
    );
  });

  test('flanking wall by wall follows the floor, so that only what closing it would gain is said', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), flanking: BANDS_HZ.map(() => 50) };
    const region = { first: 20, last: 20, path: 'flanking', mechanism: 'flanking' } as const;
    expect(sentence(region, { paths_dB: levels }, false)).toBe(
      'At 5000 Hz the largest part of the sound goes around by the walls: 50 %; closing this path gains 3 dB.',
    );
  });

  test('flanking bears the most that the floor alone can still gain', () => {
    const levels = { direct: BANDS_HZ.map(() => 50), flanking: BANDS_HZ.map(() => 50) };
    const region = { first: 20, last: 20, path: 'flanking', mechanism: 'flanking' } as const;
    expect(sentence(region, { paths_dB: levels })).toBe(
      'At 5000 Hz the largest part of the sound goes around by the walls: 50 %; nothing done to the floor alone gains more than 3.0 dB here.',
    );
  });

  test.each([
    'mobility',
    'hammer-contact',
    'mass',
    'mass-spring-mass',
    'double-leaf',
    'cavity-mode',
    'coincidence',
    'bay-resonance',
    'supports',
    'flanking',
    'leak',
  ] as const)('%s without a frequency still reads as a sentence', (mechanism) => {
    const path = mechanism === 'leak' ? 'leaks' : mechanism;
    const text = sentence({ first: 0, last: 1, mechanism, path: path in PATH_MARKS ? (path as PathName) : 'direct' });
    expect(text).toMatch(/^Up to 63 Hz .{10,}\.$/);
    expect(text).not.toMatch(/undefined|NaN|= [;.]|\s\s/);
  });
});

describe('the view', () => {
  const cell = percussionNotebook().cells[2] as PathsCell;
  const ready = { of: () => ({ state: 'ready' as const, prediction: madeUpPrediction() }) };

  test('is of the wished scenario, else of the active one, else of the first shown', () => {
    const notebook = percussionNotebook(3, { active: 's2' });
    expect(pathsView(notebook, cell, ready, 's3').chosen!.id).toBe('s3');
    expect(pathsView(notebook, cell, ready, 'gone').chosen!.id).toBe('s2');
    expect(pathsView({ ...notebook, shown: ['s3'] }, cell, ready).chosen!.id).toBe('s3');
  });

  test.each([
    ['airborne', 'mass'],
    ['impact', 'mobility'],
  ] as const)('where a sentence of %s sound names a mass, the caution about load is there', (sound, mechanism) => {
    const view = (rules: 'coincidence' | 'mass' | 'mobility') => {
      const bands = BANDS_HZ.map(() => ({ path: 'direct' as const, share: 1, mechanism: rules }));
      const prediction = madeUpPrediction(45, { mechanisms: bands, impactMechanisms: bands });
      return pathsView(percussionNotebook(), { ...cell, sound }, { of: () => ({ state: 'ready', prediction }) });
    };
    expect(view(mechanism).sentences.join()).toContain('kg/m²');
    expect(view(mechanism).caution).toMatch(/load.*structural engineer/);
    expect(view('coincidence').sentences.join()).not.toContain('kg/m²');
    expect(view('coincidence').caution).toBeUndefined();
  });

  test('has a sentence per region', () => {
    const { data, sentences } = pathsView(percussionNotebook(), cell, ready);
    expect(sentences).toHaveLength(data.regions.length);
  });

  test('tells common bearings from what holds a ceiling, and stays general where cavities differ', () => {
    const all = { direct: BANDS_HZ.map(() => 50), supports: BANDS_HZ.map(() => 40) };
    const mechanisms = BANDS_HZ.map(() => ({ path: 'supports', share: 0.9, mechanism: 'supports' }) as const);
    const prediction = madeUpPrediction(45, { paths_dB: all, mechanisms });
    const said = (notebook: Notebook) =>
      pathsView(notebook, cell, { of: () => ({ state: 'ready', prediction }) }).sentences.join(' ');
    const notebook = percussionNotebook(1);
    const own = withSupports(notebook, ['separate-joists']);
    expect(said(notebook)).toContain('through what holds the ceiling');
    expect(said(own)).toContain('through common bearings');
    expect(said(withSupports(notebook, ['separate-joists', 'clips']))).toContain('through what holds the ceiling');
    expect(PATH_MARKS.supports.description).toContain('common bearings');
  });

  test.each([
    [percussionNotebook(3, { shown: [] }), ready, 'No scenario'],
    [percussionNotebook(), { of: () => ({ state: 'computing' as const }) }, 'Computing'],
    [percussionNotebook(), { of: () => ({ state: 'failed' as const, message: 'no' }) }, 'no paths'],
    [
      percussionNotebook(),
      { of: () => ({ state: 'ready' as const, prediction: madeUpPrediction(45, { paths_dB: {} }) }) },
      'no airborne paths',
    ],
  ])('says why there is nothing (%#)', (notebook, results, words) => {
    expect(pathsView(notebook, cell, results).empty).toContain(words);
  });

  test('becomes a file with a row per band', () => {
    const lines = sharesCsv(pathsView(percussionNotebook(), cell, ready).data)
      .trim()
      .split('\r\n');
    expect(lines[0]).toBe('band_Hz,direct (share),supports (share),flanking (share)');
    expect(lines).toHaveLength(1 + BANDS_HZ.length);
  });
});

/** As many cavities as supports, each with a board below. */
function withSupports(notebook: Notebook, supports: readonly SupportKind[]): Notebook {
  const [stack] = notebook.stacks;
  const cavity = stack!.layers.find((layer) => layer.kind === 'cavity')!;
  const leaves = stack!.layers.filter((layer) => layer.kind === 'leaf');
  const below = supports.flatMap((support, i) => [
    { ...cavity, id: `cavity-${i}`, support },
    { ...leaves.at(-1)!, id: `below-${i}` },
  ]);
  return { ...notebook, stacks: [{ ...stack!, layers: [leaves[0]!, ...below] }] };
}
