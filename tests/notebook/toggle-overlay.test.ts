import { expect, test } from 'vitest';
import { toggleOverlay } from '#src/notebook/edits/toggle-overlay.ts';
import { focusScenario } from '#src/notebook/focus-scenario.ts';
import { readNotebook } from '#src/notebook/read-file.ts';
import type { CurvesCell, Notebook } from '#src/notebook/types.ts';
import { writeNotebook } from '#src/notebook/write-file.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const overlaysOf = ({ cells }: Notebook) => (cells.find((c) => c.id === 'curves') as CurvesCell).overlays;

function withCurves(changes: object): string {
  const room = practiceRoom();
  return JSON.stringify({ ...room, cells: room.cells.map((c) => (c.id === 'curves' ? { ...c, ...changes } : c)) });
}

test('an overlay is laid on and taken away, and others stay', () => {
  const on = toggleOverlay(toggleOverlay(practiceRoom(), 'curves', 'double-leaf'), 'curves', 'paths');
  expect(overlaysOf(on)).toEqual(['double-leaf', 'paths']);
  expect(overlaysOf(toggleOverlay(on, 'curves', 'double-leaf'))).toEqual(['paths']);
  expect(() => toggleOverlay(on, 'ratings', 'paths')).toThrow('must be of kind "curves"');
});

test.each(['limp-panel', 'double-leaf', 'floating-floor', 'bare-slab'] as const)('a file keeps the overlay %s', (o) => {
  const reading = readNotebook(writeNotebook(toggleOverlay(practiceRoom(), 'curves', o)));
  expect(reading.ok && overlaysOf(reading.notebook)).toEqual([o]);
});

test('a file keeps the lowest band; one without opens as before; another band or an unknown overlay is refused', () => {
  const low = readNotebook(withCurves({ lowestBand_Hz: 20 }));
  expect(low.ok && low.notebook.cells.find((c) => c.id === 'curves')).toHaveProperty('lowestBand_Hz', 20);
  expect(readNotebook(withCurves({})).ok).toBe(true);
  for (const changes of [{ lowestBand_Hz: 25 }, { overlays: ['triple-leaf'] }]) {
    const refused = readNotebook(withCurves(changes));
    expect(refused.ok).toBe(false);
    expect(!refused.ok && refused.problems[0]!.message).toMatch(/lowestBand_Hz|overlays/);
  }
});

test('what is explained is the active scenario if it is shown, else the first that is', () => {
  expect(focusScenario(practiceRoom())).toBe('slab');
  expect(focusScenario(practiceRoom({ shown: ['hung', 'both'] }))).toBe('hung');
  expect(focusScenario(practiceRoom({ shown: [] }))).toBeUndefined();
});
