import type { Notebook } from './types.ts';

/**
 * Id of the one scenario that is explained where several are drawn: the active one, or the first that is shown if it is
 * not; undefined where none is shown.
 */
export function focusScenario({ active, shown }: Notebook): string | undefined {
  return shown.includes(active) ? active : shown[0];
}
