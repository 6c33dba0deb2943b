import { expect, test } from 'vitest';
import type { BandChartData, BandOverlay } from '#src/charts/band-data.ts';
import { bandRange } from '#src/charts/band-range.ts';
import { scenarioMark } from '#src/charts/scenario-marks.ts';

const chart = (overlays: readonly BandOverlay[], zeroLine = false): BandChartData => ({
  bands_Hz: [500, 630, 800],
  valueLabel: 'R, dB',
  series: [{ id: 'a', label: 'A', values_dB: [14, 40, 67], mark: scenarioMark(0) }],
  overlays,
  zeroLine,
});
const line = (values_dB: readonly number[]): BandOverlay => ({
  kind: 'line',
  label: 'mass law',
  description: '',
  values_dB,
  dash: '',
});

test('the curves alone: whole tens around them', () => {
  expect(bandRange(chart([]))).toEqual({ low: 10, high: 70 });
});

test('a line that ends above the curves is not cut', () => {
  expect(bandRange(chart([line([20, 50, 78])]))).toEqual({ low: 10, high: 80 });
});

test('a line that runs away widens the picture by two tens and no more', () => {
  expect(bandRange(chart([line([-300, 50, 300])]))).toEqual({ low: -10, high: 90 });
});

test('a range of values and a contour are shown whole, however far they reach', () => {
  const range: BandOverlay = {
    kind: 'range',
    label: '',
    description: '',
    low_dB: [2, 30, 50],
    high_dB: [30, 60, 101],
    color: '',
  };
  const contour: BandOverlay = {
    kind: 'contour',
    label: '',
    description: '',
    values_dB: [NaN, 50, 74],
    deficiencies_dB: [0, 0, 0],
    missing: 'below',
  };
  expect(bandRange(chart([range]))).toEqual({ low: 0, high: 110 });
  expect(bandRange(chart([contour]))).toEqual({ low: 10, high: 80 });
});

test('gaps and marked frequencies do not count, and without a curve the lines decide', () => {
  const mark: BandOverlay = { kind: 'frequency', label: '', description: '', frequency_Hz: 500, dash: '' };
  expect(bandRange(chart([line([NaN, NaN, NaN]), mark]))).toEqual({ low: 10, high: 70 });
  expect(bandRange({ ...chart([line([20, 50, 178])]), series: [] })).toEqual({ low: 20, high: 180 });
});

test('differences go in fives and keep the zero line in the picture', () => {
  expect(bandRange(chart([], true))).toEqual({ low: -5, high: 70 });
});

test('where values count from 0 dB on, what is less does not widen the picture', () => {
  const deep = { ...chart([]), series: [{ ...chart([]).series[0]!, values_dB: [62, 5, -28] }] };
  expect(bandRange(deep)).toEqual({ low: -30, high: 70 });
  expect(bandRange({ ...deep, cutBelow_dB: 0 })).toEqual({ low: 0, high: 70 });
  expect(bandRange({ ...deep, overlays: [line([-40, -40, -40])], cutBelow_dB: 0 })).toEqual({ low: 0, high: 70 });
  const nothing = { ...deep, series: [{ ...deep.series[0]!, values_dB: [-5, -9, -28] }], cutBelow_dB: 0 };
  expect(bandRange(nothing)).toEqual({ low: 0, high: 50 });
});
