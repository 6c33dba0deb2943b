/** What a scenario is, in words for the rail. */
import { changeInWords } from '#cells/shared/parameter-words.ts';
import { findParameter } from '#src/notebook/find.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { changedKeys, inheritedValues, valuesOf } from '#src/notebook/values.ts';

export interface ChangeInWords {
  readonly key: string;
  readonly label: string;
  /** "slab thickness 38 → 76 mm" */
  readonly words: string;
}

/** How a scenario differs from its parent, parameter by parameter. */
export function changesInWords(notebook: Notebook, scenarioId: string): readonly ChangeInWords[] {
  const now = valuesOf(notebook, scenarioId);
  const before = inheritedValues(notebook, scenarioId);
  return changedKeys(notebook, scenarioId).map((key) => {
    const parameter = findParameter(notebook, key);
    return { key, label: parameter.label, words: changeInWords(parameter, before[key]!, now[key]!, notebook.units) };
  });
}

/** A name that is not taken: "Slab on top 2", "Slab on top 3", … */
export function freshName(from: string, taken: readonly string[]): string {
  const stem = from.replace(/ \d+$/, '');
  for (let n = 2; ; n++) if (!taken.includes(`${stem} ${n}`)) return `${stem} ${n}`;
}
