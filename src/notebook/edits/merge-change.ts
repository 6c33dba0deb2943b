import { findScenario } from '../find.ts';
import type { Notebook } from '../types.ts';
import { changedKeys } from '../values.ts';
import { withoutChange } from './scenario-changes.ts';
import { setParameter } from './set-parameter.ts';

/**
 * Hands a scenario's change of one parameter to its parent, for whom it then holds too, and for every other fork that
 * has no value of its own.
 *
 * @throws RangeError if the scenario has no parent or no such change.
 */
export function mergeChange(notebook: Notebook, scenarioId: string, key: string): Notebook {
  const { parent, changes } = findScenario(notebook, scenarioId);
  if (parent === null) throw new RangeError('scenario to merge from must be a fork, got the base');
  if (!Object.hasOwn(changes, key)) throw new RangeError(`change to merge must be one of the scenario's, got "${key}"`);
  return withoutChange(setParameter(notebook, key, changes[key]!, parent), scenarioId, key);
}

/** Hands every change to the parent. */
export function mergeAllChanges(notebook: Notebook, scenarioId: string): Notebook {
  return changedKeys(notebook, scenarioId).reduce((next, key) => mergeChange(next, scenarioId, key), notebook);
}
