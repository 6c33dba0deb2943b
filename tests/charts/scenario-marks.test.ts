import { expect, test } from 'vitest';
import { SCENARIO_MARK_COUNT, scenarioMark } from '#src/charts/scenario-marks.ts';

test('the first eight scenarios share neither colour nor dash nor marker', () => {
  const marks = Array.from({ length: SCENARIO_MARK_COUNT }, (_, i) => scenarioMark(i));
  for (const look of ['color', 'dash', 'marker'] as const)
    expect(new Set(marks.map((m) => m[look])).size).toBe(SCENARIO_MARK_COUNT);
});

test('no two of the first 64 scenarios look alike, and no two of the first 32 even without colour', () => {
  const marks = Array.from({ length: SCENARIO_MARK_COUNT ** 2 }, (_, i) => scenarioMark(i));
  expect(new Set(marks.map((m) => JSON.stringify(m))).size).toBe(SCENARIO_MARK_COUNT ** 2);
  expect(new Set(marks.slice(0, 32).map((m) => `${m.dash}/${m.marker}`)).size).toBe(32);
});
