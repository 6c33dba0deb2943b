import type { Notebook, UnitSystem } from '../types.ts';

/** Changes what is shown and typed, never a value. */
export function setUnits(notebook: Notebook, units: UnitSystem): Notebook {
  return { ...notebook, units };
}
