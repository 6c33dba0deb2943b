/** The kinds of cell: what they are called, how an empty one starts, and where their element is loaded from. */
import type { Cell, CellKind, Notebook } from '#src/notebook/types.ts';
import type { CellProperties } from './contract.ts';

export interface CellKindInfo {
  readonly kind: CellKind;
  readonly label: string;
  /** One line for whoever chooses what to add. */
  readonly about: string;
  /** A cell of this kind as it starts; undefined where the notebook has nothing for it to show. */
  start(notebook: Notebook, id: string): Cell | undefined;
}

/** Each element is a file of its own and loaded when the first cell of its kind appears. */
const MODULES = import.meta.glob('./*/*-cell.ts');

export const CELL_KINDS: readonly CellKindInfo[] = [
  {
    kind: 'commentary',
    label: 'Text',
    about: 'Words with live values, questions with folded answers, formulas.',
    start: (_, id) => ({ id, kind: 'commentary', folded: false, text: '' }),
  },
  {
    kind: 'parameters',
    label: 'Parameters',
    about: 'Sliders and choices, one column per shown scenario.',
    start: (_, id) => ({ id, kind: 'parameters', folded: false, title: 'Parameters', parameters: [] }),
  },
  {
    kind: 'stack',
    label: 'Stack',
    about: 'The floor-ceiling drawn to scale, layer by layer.',
    start: (notebook, id) => ofFirstStack(notebook, (stack) => ({ id, kind: 'stack', folded: false, stack })),
  },
  {
    kind: 'curves',
    label: 'Curves',
    about: 'Isolation or impact level over frequency, a line per shown scenario.',
    start: (notebook, id) =>
      ofFirstStack(notebook, (stack) => ({
        id,
        kind: 'curves',
        folded: false,
        title: 'Transmission loss',
        stack,
        quantity: 'airborne',
        overlays: [],
      })),
  },
  {
    kind: 'ratings',
    label: 'Ratings',
    about: 'STC, Rw, OITC, IIC, Ln,w and how each number came about.',
    start: (notebook, id) =>
      ofFirstStack(notebook, (stack) => ({ id, kind: 'ratings', folded: false, title: 'Ratings', stack })),
  },
  {
    kind: 'paths',
    label: 'Paths',
    about: 'Which way the sound takes, and what rules each band.',
    start: (notebook, id) =>
      ofFirstStack(notebook, (stack) => ({
        id,
        kind: 'paths',
        folded: false,
        title: 'Paths',
        stack,
        sound: 'airborne',
      })),
  },
];

export function cellKindInfo(kind: CellKind): CellKindInfo {
  return CELL_KINDS.find((k) => k.kind === kind)!;
}

export type CellElement = HTMLElement & CellProperties;

/** Loads and makes the element of a kind. @throws what the import throws, when the file cannot be had. */
export async function makeCellElement(kind: CellKind, document: Document): Promise<CellElement> {
  const load = MODULES[`./${kind}/${kind}-cell.ts`];
  if (!load) throw new Error(`cells of the kind "${kind}" cannot be shown yet`);
  await load();
  return document.createElement(`${kind}-cell`) as CellElement;
}

function ofFirstStack(notebook: Notebook, cell: (stackId: string) => Cell): Cell | undefined {
  const [stack] = notebook.stacks;
  return stack && cell(stack.id);
}
