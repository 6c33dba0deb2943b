import type { Notebook } from '../types.ts';

/** The notebook with these scenarios shown, in the order of its list of scenarios. */
export function listed(notebook: Notebook, shown: readonly string[]): Notebook {
  const wanted = new Set(shown);
  return { ...notebook, shown: notebook.scenarios.map((s) => s.id).filter((id) => wanted.has(id)) };
}
