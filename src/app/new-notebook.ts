/** How a notebook begins: empty, or as a copy of another one. */
import { freshId } from '#src/notebook/fresh-id.ts';
import { FORMAT, type Notebook, VERSION } from '#src/notebook/types.ts';

/** A bare concrete slab, so that the first cell has something to show. */
export function emptyNotebook(random: () => number): Notebook {
  const base = 'base';
  return {
    format: FORMAT,
    version: VERSION,
    id: freshId(random),
    title: 'New notebook',
    units: 'SI',
    parameters: [
      { key: 'slab', label: 'slab thickness', quantity: 'length', value: 0.12, min: 0.05, max: 0.3, step: 0.005 },
    ],
    stacks: [
      {
        id: 'floor',
        name: 'Floor',
        length_m: 4,
        width_m: 2.5,
        covering: 'none',
        layers: [
          {
            kind: 'leaf',
            id: 'slab',
            name: 'slab',
            contact: 'loose',
            sheets: [{ material: 'concrete', thickness_m: { parameter: 'slab' } }],
          },
        ],
      },
    ],
    materials: [],
    flanking: { kind: 'none', R500_dB: 60, slope_dB_per_octave: 3 },
    cells: [
      { kind: 'parameters', id: 'parameters', folded: false, title: 'Parameters', parameters: [] },
      { kind: 'stack', id: 'stack', folded: false, stack: 'floor' },
      {
        kind: 'curves',
        id: 'curves',
        folded: false,
        title: 'Transmission loss',
        stack: 'floor',
        quantity: 'airborne',
        overlays: [],
      },
    ],
    scenarios: [{ id: base, name: 'As built', parent: null, changes: {} }],
    shown: [base],
    reference: base,
    active: base,
  };
}

/** The same content as a notebook of its own. */
export function duplicateNotebook(notebook: Notebook, title: string, random: () => number): Notebook {
  return { ...notebook, id: freshId(random, [notebook.id]), title };
}
