import { describe, expect, test } from 'vitest';
import type { Result, ResultsView } from '#cells/contract.ts';
import { curvesView } from '#cells/curves/curves-view.ts';
import * as overlayTools from '#cells/curves/overlay-tools.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { modelResidual_dB } from '#src/acoustics/uncertainty.ts';
import type { CurvesCell } from '#src/notebook/types.ts';
import { BANDS_HZ, madeUpPrediction } from '../../charts/made-up-prediction.ts';
import { percussionNotebook } from '../../charts/percussion-notebook.ts';

const LEVELS: Record<string, number> = { s1: 40, s2: 50, s3: 45 };

function ready(changes: Record<string, Result> = {}): ResultsView {
  return { of: (id) => changes[id] ?? { state: 'ready', prediction: madeUpPrediction(LEVELS[id]) } };
}

/** The standard of each contour, and the rating whose contour stands there with the other units. */
const CONTOURS = {
  airborne: { SI: ['ISO 717-1', 'STC'], 'inch-pound': ['ASTM E413', 'Rw'] },
  impact: { SI: ['ISO 717-2', 'IIC'], 'inch-pound': ['ASTM E989', 'Ln,w'] },
} as const;

function curvesCell(changes: Partial<CurvesCell> = {}): CurvesCell {
  return { ...(percussionNotebook().cells[1] as CurvesCell), ...changes };
}

test('every shown scenario has a curve, in the order they are shown, each with its own mark', () => {
  const notebook = percussionNotebook(3, { shown: ['s3', 's1'] });
  const { series } = curvesView(notebook, curvesCell(), ready()).data;
  expect(series.map((s) => s.id)).toEqual(['s3', 's1']);
  expect(series.map((s) => s.mark.color)).toEqual(['var(--scenario-3)', 'var(--scenario-1)']);
});

test('a gain is positive where the scenario lets less through than the reference', () => {
  const { data } = curvesView(percussionNotebook(), curvesCell({ quantity: 'difference' }), ready());
  const slab = data.series.find((s) => s.id === 's2')!;
  expect(data.zeroLine).toBe(true);
  expect(slab.values_dB[0]).toBeCloseTo(madeUpPrediction(50).R_dB[0]! - madeUpPrediction(40).R_dB[0]!, 9);
  expect(slab.values_dB.every((v) => v > 0)).toBe(true);
});

test('an impact gain is positive where the level falls', () => {
  const { data } = curvesView(percussionNotebook(), curvesCell({ quantity: 'impact-difference' }), ready());
  const slab = data.series.find((s) => s.id === 's2')!;
  expect(slab.values_dB[3]).toBeCloseTo(10 / 3, 9);
});

test('the reference scenario has no curve of differences from itself', () => {
  const { data, remarks } = curvesView(percussionNotebook(), curvesCell({ quantity: 'difference' }), ready());
  expect(data.series.map((s) => s.id)).toEqual(['s2', 's3']);
  expect(remarks[0]).toContain('Existing floor');
});

describe('what is not there', () => {
  test('no scenario shown', () => {
    const view = curvesView(percussionNotebook(3, { shown: [] }), curvesCell(), ready());
    expect(view.empty).toContain('No scenario is shown');
  });

  test('only the reference shown under a difference', () => {
    const notebook = percussionNotebook(3, { shown: ['s1'] });
    expect(curvesView(notebook, curvesCell({ quantity: 'difference' }), ready()).empty).toContain('Only the reference');
  });

  test('nothing computed yet', () => {
    const view = curvesView(percussionNotebook(), curvesCell(), { of: () => ({ state: 'computing' }) });
    expect(view.empty).toContain('Computing');
    expect(view.busy).toBe(true);
  });

  test('the old curve stays while a new one is computed', () => {
    const results = ready({ s2: { state: 'computing', prediction: madeUpPrediction(48) } });
    const view = curvesView(percussionNotebook(), curvesCell(), results);
    expect(view.busy).toBe(true);
    expect(view.data.series.map((s) => s.id)).toEqual(['s1', 's2', 's3']);
  });

  test('a failure is told with its scenario, and the last good curve is marked as such', () => {
    const results = ready({
      s2: { state: 'failed', message: 'thickness_m must be > 0', prediction: madeUpPrediction(48) },
      s3: { state: 'failed', message: 'worker died' },
    });
    const view = curvesView(percussionNotebook(), curvesCell(), results);
    expect(view.failures).toEqual([
      { name: 'Slab on top', message: 'thickness_m must be > 0' },
      { name: 'Ceiling on resilient channel', message: 'worker died' },
    ]);
    expect(view.data.series.map((s) => s.note)).toEqual(['reference', 'last good curve']);
  });

  test('an unknown scenario among the shown is left out', () => {
    const notebook = percussionNotebook(2, { shown: ['s1', 'gone'] });
    expect(curvesView(notebook, curvesCell(), ready()).data.series.map((s) => s.id)).toEqual(['s1']);
  });
});

describe('overlays', () => {
  const all = curvesCell({ overlays: ['contour', 'mass-law', 'resonances', 'critical', 'paths', 'uncertainty'] });

  test('they belong to the active scenario, and the remark says so', () => {
    const { remarks } = curvesView(percussionNotebook(3, { active: 's2' }), all, ready(), overlayTools);
    expect(remarks.at(-1)).toContain('Slab on top');
  });

  test('if the active scenario is not shown they belong to the first that is', () => {
    const notebook = percussionNotebook(3, { active: 's3', shown: ['s2', 's1'] });
    expect(curvesView(notebook, all, ready(), overlayTools).remarks.at(-1)).toContain('Slab on top');
  });

  test.each([
    ['SI', 'airborne', /^R′w \d+ contour$/],
    ['inch-pound', 'airborne', /^ASTC \d+ contour$/],
    ['SI', 'impact', /^Ln,w \d+ contour$/],
    ['inch-pound', 'impact', /^IIC \d+ contour$/],
  ] as const)('with units %s the %s contour is the one of the country', (units, quantity, name) => {
    const view = curvesView(percussionNotebook(1, { units }), { ...all, quantity }, ready(), overlayTools);
    const contour = view.data.overlays.find((o) => o.kind === 'contour')!;
    expect(contour.label).toMatch(name);
    const [own, other] = CONTOURS[quantity][units];
    expect(contour.description).toContain(`contour of ${own}, and`);
    expect(contour.description).toContain(`the contour of ${other} stands here`);
  });

  test('without walls in the curve the contour has the name of laboratory values', () => {
    const { paths_dB, ...others } = madeUpPrediction();
    const prediction = { ...others, paths_dB: { direct: paths_dB.direct! } };
    const view = curvesView(percussionNotebook(1), all, ready({ s1: { state: 'ready', prediction } }), overlayTools);
    expect(view.data.overlays.find((o) => o.kind === 'contour')!.label).toMatch(/^Rw \d+ contour$/);
  });

  test('the deficiencies of the contour add up to what its description says', () => {
    const { data } = curvesView(percussionNotebook(1), all, ready(), overlayTools);
    const contour = data.overlays.find((o) => o.kind === 'contour')!;
    if (contour.kind !== 'contour') throw new Error('no contour');
    const sum = contour.deficiencies_dB.reduce((a, b) => a + b, 0);
    expect(contour.description).toContain(`${sum.toFixed(1)} dB in all`);
    expect(contour.deficiencies_dB).toHaveLength(BANDS_HZ.length);
  });

  test('a contour below the curve everywhere is impossible: the curve touches it or misses it somewhere', () => {
    const { data } = curvesView(percussionNotebook(1), all, ready(), overlayTools);
    const contour = data.overlays.find((o) => o.kind === 'contour')!;
    if (contour.kind !== 'contour') throw new Error('no contour');
    contour.values_dB.forEach((value, i) => {
      const curve = data.series[0]!.values_dB[i]!;
      // The standard rates band values rounded to 0.1 dB.
      if (Number.isFinite(value)) expect(contour.deficiencies_dB[i]).toBeCloseTo(Math.max(0, value - curve), 0);
    });
  });

  test('resonances stand at their own frequency, lowest first', () => {
    const { data } = curvesView(percussionNotebook(1), all, ready(), overlayTools);
    const marks = data.overlays.filter((o) => o.kind === 'frequency');
    expect(marks.map((m) => m.label)).toEqual(['f0 62 Hz', 'fc 1300 Hz', 'fc 2500 Hz']);
  });

  test('the uncertainty lies around the curve by 1.96 times that of laboratories (500 Hz: 1.8 dB) and of the model', () => {
    const { data } = curvesView(percussionNotebook(1), all, ready(), overlayTools);
    const range = data.overlays.find((o) => o.kind === 'range')!;
    if (range.kind !== 'range') throw new Error('no range');
    const at500 = BANDS_HZ.indexOf(500);
    expect(range.high_dB[at500]! - range.low_dB[at500]!).toBeCloseTo(
      2 * 1.96 * Math.hypot(1.8, modelResidual_dB(500)),
      9,
    );
  });

  test('the uncertainty says where it is borrowed, and that what walls carry is taken as exact', () => {
    const range = (prediction: Prediction) => {
      const view = curvesView(percussionNotebook(1), all, ready({ s1: { state: 'ready', prediction } }), overlayTools);
      return view.data.overlays.find((o) => o.kind === 'range')!;
    };
    const withWalls = madeUpPrediction();
    expect(range(withWalls)).toMatchObject({ guessedBelow_Hz: 100 });
    expect(range(withWalls).description).toMatch(/this floor if the walls around it let through exactly/);
    expect(range(withWalls).description).toMatch(/Paler below 100 Hz: no measurement/);
    const alone = range({ ...withWalls, paths_dB: { direct: withWalls.paths_dB.direct! } });
    expect(alone.description).toMatch(/^where 95 of 100 laboratories would measure this floor: what/);
  });

  test('what does not fit the quantity is left out', () => {
    const view = curvesView(percussionNotebook(2), { ...all, quantity: 'difference' }, ready(), overlayTools);
    expect(new Set(view.data.overlays.map((o) => o.kind))).toEqual(new Set(['frequency']));
  });
});

test('values that nobody measures have a remark, at middle frequencies and of airborne sound only', () => {
  const remarks = (band_Hz: number, value_dB: number, flanking = false, changes: Partial<CurvesCell> = {}) => {
    const { paths_dB, ...others } = madeUpPrediction();
    const R_dB = BANDS_HZ.map((band) => (band === band_Hz ? value_dB : 50));
    const prediction = {
      ...others,
      R_dB,
      paths_dB: { direct: R_dB, ...(flanking && { flanking: paths_dB.flanking! }) },
    };
    const view = curvesView(percussionNotebook(1), curvesCell(changes), ready({ s1: { state: 'ready', prediction } }));
    return view.remarks.filter((r) => r.includes('common practice, no source'));
  };
  expect(remarks(1000, 75)).toEqual([]);
  expect(remarks(1000, 76)[0]).toMatch(/the walls then carry more than the floor, and none are counted here\./);
  expect(remarks(1000, 76, true)[0]).toMatch(/the walls then carry more than the floor\. Such/);
  expect(remarks(4000, 90)).toEqual([]);
  expect(remarks(1000, 90, false, { quantity: 'impact' })).toEqual([]);
});

test('the label says quantity, range and extremes of every curve', () => {
  const { label } = curvesView(percussionNotebook(1), curvesCell(), ready());
  const { R_dB } = madeUpPrediction(40);
  expect(label).toBe(
    `Curves of the apparent transmission loss R′ in one-third-octave bands, 50 to 5000 Hz: Existing floor from ${Math.min(...R_dB).toFixed(1)} to ${Math.max(...R_dB).toFixed(1)} dB.`,
  );
});

test('curves say that they hold what goes around by the walls, where they do', () => {
  const view = (quantity: CurvesCell['quantity'], result?: Result, overlays: CurvesCell['overlays'] = []) =>
    curvesView(percussionNotebook(1), curvesCell({ quantity, overlays }), ready(result && { s1: result }));
  expect(view('airborne').around).toMatch(/in the curves .*; “Paths” shows what the floor alone lets through\.$/);
  expect(view('airborne', undefined, ['paths']).around).toMatch(/in the curves \([^)]*\)\.$/);
  // A limit says nothing about footsteps.
  expect(view('impact').around).toBeUndefined();
  const { flanking: _, ...floor } = madeUpPrediction(40).paths_dB;
  const alone = view('airborne', { state: 'ready', prediction: madeUpPrediction(40, { paths_dB: floor }) });
  expect(alone.around).toBeUndefined();
  expect(alone.data.valueLabel).toBe('transmission loss R, dB');
});

describe('from 20 Hz', () => {
  const low = madeUpPrediction(50, {
    bands_Hz: [20, 25, 31.5, 40, ...BANDS_HZ],
    R_dB: [20, 20, 20, 20, ...madeUpPrediction(50).R_dB],
  });

  test('the cell asks for the bands it shows', () => {
    const asked: unknown[] = [];
    const results: ResultsView = {
      of: (_scenario, _stack, choice) => {
        asked.push(choice?.lowestBand_Hz);
        return { state: 'ready', prediction: low };
      },
    };
    const { data, label } = curvesView(percussionNotebook(1), curvesCell({ lowestBand_Hz: 20 }), results, overlayTools);
    expect(asked).toContain(20);
    expect(data.bands_Hz[0]).toBe(20);
    expect(label).toContain('20 to 5000 Hz');
    expect(data.overlays.map((o) => o.kind)).toEqual(['region']);
  });

  test('while one curve has no low bands yet, none is drawn with them', () => {
    const results = ready({
      s1: { state: 'ready', prediction: low },
      s2: { state: 'computing', prediction: madeUpPrediction(48) },
    });
    const { data } = curvesView(percussionNotebook(2), curvesCell({ lowestBand_Hz: 20 }), results);
    expect(data.bands_Hz).toEqual(BANDS_HZ);
    for (const { values_dB } of data.series) expect(values_dB).toHaveLength(BANDS_HZ.length);
  });
});

test('a textbook model that the floor does not fit leaves a sentence, not a line', () => {
  const cell = curvesCell({ quantity: 'impact', overlays: ['floating-floor'] });
  const { data, remarks } = curvesView(percussionNotebook(2), cell, ready(), overlayTools);
  expect(data.overlays).toEqual([]);
  expect(remarks).toEqual([
    'What is laid over the curves belongs to “Slab on top”.',
    'Floating floor after Cremer is not drawn: it is made for an uppermost leaf that lies on a mat, and this one does not.',
  ]);
});

test('impact curves are drawn from 0 dB on, which is said where one goes below; its values stay', () => {
  const quiet = madeUpPrediction(40, { Ln_dB: BANDS_HZ.map((_, i) => 60 - 4.4 * i) });
  const view = (results: ResultsView, quantity: CurvesCell['quantity'] = 'impact') =>
    curvesView(percussionNotebook(), curvesCell({ quantity }), results);
  const { data, remarks } = view(ready({ s2: { state: 'ready', prediction: quiet } }));
  expect(data.cutBelow_dB).toBe(0);
  expect(data.series.find((s) => s.id === 's2')!.values_dB.at(-1)).toBeCloseTo(-28, 9);
  expect(remarks).toContainEqual(expect.stringMatching(/^Below 0 dB no curve is drawn: .*The numbers hold those/));
  expect(view(ready()).remarks).not.toContainEqual(expect.stringContaining('Below 0 dB'));
  for (const quantity of ['airborne', 'difference', 'impact-difference'] as const)
    expect(view(ready(), quantity).data).not.toHaveProperty('cutBelow_dB');
});
