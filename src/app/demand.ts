/** Which predictions a notebook's page needs, most urgent first. */
import type { FloorPart } from '#src/acoustics/floor-part.ts';
import { focusScenario } from '#src/notebook/focus-scenario.ts';
import type { Cell, CurvesCell, Notebook } from '#src/notebook/types.ts';

export interface Wanted {
  readonly scenario: string;
  readonly stack: string;
  /** What of the floor is to be predicted. */
  readonly part: FloorPart;
  readonly lowestBand_Hz: 20 | 50;
}

/** Live values in the text of a commentary: `value:stack/quantity` or `value:scenario/stack/quantity`. */
const LIVE_VALUE = /\bvalue:([\w/-]+)/g;

/**
 * The stacks that cells show, in the active scenario, in the shown ones and in the reference; then what the text names
 * beyond that; then the parts of floors that overlays and folded parts are made from. Each once; ids that the notebook does not have are left out.
 */
export function wantedPredictions(notebook: Notebook): readonly Wanted[] {
  const scenarios = new Set([notebook.active, ...notebook.shown, notebook.reference]);
  const pairs = new Map<string, Wanted>();
  const want = (scenario: string, stack: string, part: FloorPart = 'whole') => {
    const known = notebook.scenarios.some((s) => s.id === scenario) && notebook.stacks.some((s) => s.id === stack);
    if (!known) return;
    pairs.set(`${scenario}/${stack}/${part}`, { scenario, stack, part, lowestBand_Hz: lowestBand_Hz(notebook, stack) });
  };
  for (const scenario of scenarios) for (const stack of stacksOf(notebook.cells)) want(scenario, stack);
  for (const { scenario, stack, gain } of notebook.cells.flatMap(namedInText)) {
    want(scenario ?? notebook.active, stack);
    if (gain) want(notebook.reference, stack);
  }
  const focus = focusScenario(notebook);
  for (const cell of notebook.cells) {
    if (focus && showsFloatingFloor(cell)) want(focus, cell.stack, 'below-floating');
    if (cell.kind !== 'ratings' || !cell.laidPart) continue;
    for (const scenario of notebook.shown)
      for (const part of ['bare-slab', 'laid-on-slab'] as const) want(scenario, cell.stack, part);
  }
  return [...pairs.values()];
}

function stacksOf(cells: readonly Cell[]): ReadonlySet<string> {
  return new Set(cells.flatMap((cell) => ('stack' in cell ? [cell.stack] : [])));
}

/** One cell of curves from 20 Hz is enough: its prediction serves the others too. */
function lowestBand_Hz({ cells }: Notebook, stack: string): 20 | 50 {
  return cells.some((c) => c.kind === 'curves' && c.stack === stack && c.lowestBand_Hz === 20) ? 20 : 50;
}

function showsFloatingFloor(cell: Cell): cell is CurvesCell {
  return cell.kind === 'curves' && cell.quantity === 'impact' && cell.overlays.includes('floating-floor');
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
