/** Which predictions a notebook's page needs, most urgent first. */
import type { Cell, Notebook } from '#src/notebook/types.ts';

export interface Wanted {
  readonly scenario: string;
  readonly stack: string;
}

/** Live values in the text of a commentary: `value:stack/quantity` or `value:scenario/stack/quantity`. */
const LIVE_VALUE = /\bvalue:([\w/-]+)/g;

/**
 * The stacks that cells show, in the active scenario, in the shown ones and in the reference; then what the text names
 * beyond that. Each pair once; ids that the notebook does not have are left out.
 */
export function wantedPredictions(notebook: Notebook): readonly Wanted[] {
  const scenarios = new Set([notebook.active, ...notebook.shown, notebook.reference]);
  const pairs = new Map<string, Wanted>();
  const want = (scenario: string, stack: string) => {
    const known = notebook.scenarios.some((s) => s.id === scenario) && notebook.stacks.some((s) => s.id === stack);
    if (known) pairs.set(`${scenario}/${stack}`, { scenario, stack });
  };
  for (const scenario of scenarios) for (const stack of stacksOf(notebook.cells)) want(scenario, stack);
  for (const { scenario, stack, gain } of notebook.cells.flatMap(namedInText)) {
    want(scenario ?? notebook.active, stack);
    if (gain) want(notebook.reference, stack);
  }
  return [...pairs.values()];
}

function stacksOf(cells: readonly Cell[]): ReadonlySet<string> {
  return new Set(cells.flatMap((cell) => ('stack' in cell ? [cell.stack] : [])));
}

interface Named {
  readonly scenario: string | undefined;
  readonly stack: string;
  /** A difference to the reference scenario. */
  readonly gain: boolean;
}

function namedInText(cell: Cell): readonly Named[] {
  if (cell.kind !== 'commentary') return [];
  return [...cell.text.matchAll(LIVE_VALUE)].flatMap(([, path]) => {
    const [quantity, stack, scenario] = path!.split('/').toReversed();
    return quantity && stack ? [{ scenario, stack, gain: quantity.endsWith('-gain') }] : [];
  });
}
