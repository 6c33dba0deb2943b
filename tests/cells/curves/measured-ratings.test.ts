import { expect, test } from 'vitest';
import { curvesView } from '#cells/curves/curves-view.ts';
import { measuredRatings } from '#cells/curves/measured-ratings.ts';
import * as TOOLS from '#cells/curves/measured-tools.ts';
import { rateBands } from '#src/acoustics/ratings/rate-bands.ts';
import { HEAVY_FLOOR } from '#src/acoustics/standards/iso-717-2-reference-floors.ts';
import { bandsOf, valuesOf } from '#src/acoustics/standards/table.ts';
import type { CurvesCell, MeasuredBands } from '#src/notebook/types.ts';
import { asSpectrum } from '../../acoustics/ratings/as-spectrum.ts';
import { madeUpPrediction } from '../../charts/made-up-prediction.ts';
import { percussionNotebook } from '../../charts/percussion-notebook.ts';
import { PUBLISHED_CASES } from '../../published/ratings-cases.ts';

const C2 = asSpectrum(PUBLISHED_CASES.find((c) => c.id === 'iso717-1-C2')!.input as Record<string, number>);
const PREDICTION = madeUpPrediction(45);

function cellWith(...sets: readonly Partial<MeasuredBands>[]): CurvesCell {
  const words = { id: 'm', name: 'report', source: 'invented', quantity: 'airborne', bands_Hz: [], values_dB: [] };
  const measured = sets.map((set) => ({ ...words, ...set }) as MeasuredBands);
  return { ...(percussionNotebook().cells[1] as CurvesCell), measured };
}

test('ISO 717-1 Annex C, table C.2: Rw (C; Ctr) = 30 (−2; −3), beside the ratings of the prediction', () => {
  const { names, rows, notes } = measuredRatings(cellWith(C2), PREDICTION, 'Slab')!;
  // STC 29 (deficiencies 26.8 in all) and OITC 25 (24.91): reckoned apart from the engine, with the tables of ASTM E413
  // and E1332 from memory; the rest is printed.
  expect(names).toEqual(['STC', 'OITC', 'Rw', 'C', 'Ctr']);
  expect(rows[1]).toEqual({ label: 'report, measured', values: [29, 25, 30, -2, -3] });
  const { STC, OITC, Rw, C, Ctr } = rateBands(PREDICTION);
  expect(rows[0]).toEqual({ label: 'Slab, predicted with walls', values: [STC, OITC, Rw, C, Ctr] });
  expect(notes).toEqual([]);
});

test('ISO 717-2, heavy reference floor: Ln,w 78, CI −11; what bands below 100 Hz would be needed for is said', () => {
  const floor = { quantity: 'impact', bands_Hz: bandsOf(HEAVY_FLOOR), values_dB: valuesOf(HEAVY_FLOOR) } as const;
  const { names, rows, notes } = measuredRatings({ ...cellWith(floor), quantity: 'impact' }, PREDICTION, 'Slab')!;
  expect(names).toEqual(['IIC', 'Ln,w', 'CI', 'CI,50-2500']);
  expect(rows[1]!.values).toEqual([28, 78, -11, NaN]);
  expect(notes).toEqual(['Not from “report”: CI,50-2500 needs 50, 63, 80 Hz.']);
});

test('ratings that lack the same bands share a phrase', () => {
  const kept = C2.bands_Hz.flatMap((f, i) => (f === 4000 ? [] : [i]));
  const short = { bands_Hz: kept.map((i) => C2.bands_Hz[i]!), values_dB: kept.map((i) => C2.values_dB[i]!) };
  expect(measuredRatings(cellWith(short), PREDICTION, 'Slab')!.notes).toEqual([
    'Not from “report”: STC, OITC need 4000 Hz.',
  ]);
});

// By hand: the curve goes up by whole decibels while the five deficiencies add to 10.0 dB at most, so by 2 dB from 52.
test('octaves on the reference curve of ISO 717-1, table 3, have Rw 54, with what such a value is allowed for', () => {
  const octaves = { bands_Hz: [125, 250, 500, 1000, 2000], values_dB: [36, 45, 52, 55, 56] };
  const { rows, notes } = measuredRatings(cellWith(octaves), PREDICTION, 'Slab')!;
  expect(rows[1]!.values.slice(0, 3)).toEqual([NaN, NaN, 54]);
  expect(notes[0]).toMatch(/^Not from “report”: STC needs 160, 200, 315, .* Hz; OITC needs .* Hz\.$/);
  expect(notes[1]).toBe('“report” has octaves, which ISO 717 rates for measurements in buildings only.');
});

test('there are none without measured bands of the quantity, nor beside differences', () => {
  const cell = cellWith(C2);
  expect(measuredRatings({ ...cell, quantity: 'impact' }, PREDICTION, 'Slab')).toBeUndefined();
  expect(measuredRatings({ ...cell, quantity: 'difference' }, PREDICTION, 'Slab')).toBeUndefined();
  expect(measuredRatings(cellWith(), PREDICTION, 'Slab')).toBeUndefined();
});

test('the view has them of the active scenario', () => {
  const notebook = percussionNotebook(3, { active: 's2' });
  const results = { of: () => ({ state: 'ready' as const, prediction: PREDICTION }) };
  expect(curvesView(notebook, cellWith(C2), results, TOOLS).ratings!.rows.map((r) => r.label)).toEqual([
    'Slab on top, predicted with walls',
    'report, measured',
  ]);
});
