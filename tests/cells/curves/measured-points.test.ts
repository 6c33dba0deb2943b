import { describe, expect, test } from 'vitest';
import type { ResultsView } from '#cells/contract.ts';
import { curvesView } from '#cells/curves/curves-view.ts';
import { measuredFit, measuredPoints } from '#cells/curves/measured-points.ts';
import * as TOOLS from '#cells/curves/measured-tools.ts';
import { bandCsv } from '#src/charts/band-table.ts';
import { measuredMark } from '#src/charts/measured-marks.ts';
import { LIMITS } from '#src/notebook/limits.ts';
import type { CurvesCell, MeasuredBands } from '#src/notebook/types.ts';
import { BANDS_HZ, madeUpPrediction } from '../../charts/made-up-prediction.ts';
import { percussionNotebook } from '../../charts/percussion-notebook.ts';

const at = (band_Hz: number) => BANDS_HZ.indexOf(band_Hz as (typeof BANDS_HZ)[number]);

/** Invented data. */
function measured(bands_Hz: readonly number[], values_dB: readonly number[], changes: Partial<MeasuredBands> = {}) {
  const words = { id: 'm', name: 'before', source: 'invented', quantity: 'airborne' } as const;
  return { ...words, bands_Hz, values_dB, ...changes };
}

function cellWith(list: readonly MeasuredBands[], changes: Partial<CurvesCell> = {}): CurvesCell {
  return { ...(percussionNotebook().cells[1] as CurvesCell), measured: list, ...changes };
}

/** A prediction of the same value in every one-third octave. */
function flat(R_dB: number, Ln_dB: number) {
  return madeUpPrediction(40, { R_dB: BANDS_HZ.map(() => R_dB), Ln_dB: BANDS_HZ.map(() => Ln_dB) });
}

describe('points', () => {
  test('stand at the bands that were measured, and a band that was not is a gap', () => {
    const [points] = measuredPoints(cellWith([measured([100, 160, 200], [24, 30, 33])]), BANDS_HZ);
    expect(points!.values_dB.slice(at(80), at(250) + 1)).toEqual([NaN, 24, NaN, 30, 33, NaN]);
    expect(points!.bandWidth).toBe('third');
  });

  test('of octaves stand at their middle bands', () => {
    const [points] = measuredPoints(cellWith([measured([125, 250, 500], [30, 40, 50])]), BANDS_HZ);
    expect(points!.bandWidth).toBe('octave');
    expect(BANDS_HZ.filter((_, i) => Number.isFinite(points!.values_dB[i]))).toEqual([125, 250, 500]);
    expect(points!.description).toBe('octaves; invented');
  });

  test('outside the picture are named, not dropped in silence', () => {
    const [points] = measuredPoints(cellWith([measured([40, 50, 6300], [20, 21, 70])]), BANDS_HZ);
    expect(points!.description).toBe('outside the picture: 40, 6300 Hz; invented');
    expect(points!.values_dB[0]).toBe(21);
  });

  test('of another quantity wait until the curves show it', () => {
    const list = [measured([100], [24]), measured([100], [65], { id: 'n', quantity: 'impact' })];
    const shown = (quantity: CurvesCell['quantity']) =>
      measuredPoints(cellWith(list, { quantity }), BANDS_HZ).map((p) => p.values_dB[at(100)]);
    expect(shown('airborne')).toEqual([24]);
    expect(shown('impact')).toEqual([65]);
    expect(shown('difference')).toEqual([]);
  });

  test('as many as a cell may hold look different from each other', () => {
    const marks = Array.from({ length: LIMITS.measured }, (_, i) => JSON.stringify(measuredMark(i)));
    expect(new Set(marks).size).toBe(LIMITS.measured);
  });
});

describe('predicted minus measured', () => {
  test('mean and rms go over the bands that both have', () => {
    // Errors: +2, −4, and 6300 Hz is not predicted. Mean −1, rms √((4 + 16)/2).
    const fit = measuredFit(measured([100, 160, 6300], [28, 34, 70]), flat(30, 60));
    expect(fit.bands_Hz).toEqual([100, 160]);
    expect(fit.mean_dB).toBeCloseTo(-1, 12);
    expect(fit.rms_dB).toBeCloseTo(Math.sqrt(10), 12);
  });

  // Three equal one-third octaves carry 10 lg 3 dB more than each; their transmission loss is that of each.
  test('octaves are compared with octaves: levels add, transmission losses average as energies', () => {
    const airborne = measuredFit(measured([125, 250], [30, 30]), flat(30, 60));
    expect(airborne.mean_dB).toBeCloseTo(0, 9);
    const impact = measuredFit(measured([125, 250], [60, 60], { quantity: 'impact' }), flat(30, 60));
    expect(impact.mean_dB).toBeCloseTo(10 * Math.log10(3), 9);
  });

  test('an octave of which a one-third octave is not predicted is not compared', () => {
    // 63 Hz needs 50, 63 and 80 Hz; 31.5 Hz and 8 kHz lie outside, 4 kHz needs 5 kHz.
    const fit = measuredFit(measured([31.5, 63, 4000, 8000], [1, 30, 30, 1]), flat(30, 60));
    expect(fit.bands_Hz).toEqual([63, 4000]);
  });
});

describe('the view of the cell', () => {
  const results: ResultsView = { of: (id) => ({ state: 'ready', prediction: flat(id === 's2' ? 40 : 30, 60) }) };
  const notebook = percussionNotebook(3, { active: 's2' });

  test('compares with the active scenario, in words with the numbers', () => {
    const { remarks } = curvesView(notebook, cellWith([measured([100, 125, 160], [38, 39, 43])]), results, TOOLS);
    expect(remarks).toEqual([
      'Predicted minus measured, “Slab on top” against “before”: mean 0.0 dB, rms 2.2 dB over 3 bands, 100 to 160 Hz.',
    ]);
  });

  test('says a single band, a sign and an absence plainly', () => {
    const list = [measured([500], [36.4], { id: 'a' }), measured([8000], [80], { id: 'b' })];
    const { remarks } = curvesView(notebook, cellWith(list), results, TOOLS);
    expect(remarks[0]).toContain('mean +3.6 dB, rms 3.6 dB over 1 band, 500 Hz.');
    expect(remarks[1]).toContain('no band in common');
  });

  test('says beside differences that measured bands are not there', () => {
    const cell = cellWith([measured([100], [38])], { quantity: 'difference' });
    const { remarks, data } = curvesView(notebook, cell, results, TOOLS);
    expect(data.overlays).toEqual([]);
    expect(remarks.at(-1)).toBe('Measured bands lie over the airborne and the impact curves, not over gains.');
  });

  test('tells the measured values in the label and in the CSV', () => {
    const { label, data } = curvesView(notebook, cellWith([measured([100, 125], [38, 39.25])]), results, TOOLS);
    expect(label).toContain('before, measured from 38.0 to 39.3 dB');
    const lines = bandCsv(data).split('\r\n');
    expect(lines[0]).toMatch(/,"before, measured \(dB\)"$/);
    expect(lines[1 + at(125)]).toMatch(/,39\.25$/);
    expect(lines[1 + at(160)]).toMatch(/,$/);
  });
});
