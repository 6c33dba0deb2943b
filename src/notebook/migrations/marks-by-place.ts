import type { Migration } from './migrate.ts';

/**
 * Version 1 knew no marks: a scenario was drawn by its place in the list. It keeps the one it was seen with. One that has a
 * mark all the same keeps that, and is checked like any other.
 */
export const marksByPlace: Migration = {
  from: 1,
  migrate: (file) => ({
    ...file,
    version: 2,
    scenarios: Array.isArray(file.scenarios) ? file.scenarios.map(withMark) : file.scenarios,
  }),
};

function withMark(scenario: unknown, place: number): unknown {
  const isObject = typeof scenario === 'object' && scenario !== null && !Array.isArray(scenario);
  return isObject ? { mark: place, ...scenario } : scenario;
}
