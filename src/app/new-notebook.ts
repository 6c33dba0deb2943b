/** How an empty notebook begins. Loaded a moment after the first curve, or when one is asked for before. */
import { setUnits } from '#src/notebook/edits/set-units.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import { FORMAT, type Notebook, type UnitSystem, VERSION } from '#src/notebook/types.ts';

/** The number comes with a second one in the list. */
const BEGUN_TITLE = /^New notebook(?: \d+)?$/;

/** Round in the units that the notebook begins in. */
const SIZES = {
  SI: { slab: { value: 0.12, min: 0.05, max: 0.3, step: 0.005 }, length_m: 4, width_m: 2.5 },
  // 5 in, 2 to 12 in by quarters; 13 by 8 ft.
  'inch-pound': {
    slab: { value: 0.127, min: 0.0508, max: 0.3048, step: 0.00635 },
    length_m: 3.9624,
    width_m: 2.4384,
  },
} as const;

/** A bare concrete slab, so that the first cell has something to show. */
export function emptyNotebook(random: () => number, units: UnitSystem = 'SI'): Notebook {
  const base = 'base';
  const { slab, length_m, width_m } = SIZES[units];
  return {
    format: FORMAT,
    version: VERSION,
    id: freshId(random),
    title: 'New notebook',
    units,
    parameters: [{ key: 'slab', label: 'slab thickness', quantity: 'length', ...slab }],
    stacks: [
      {
        id: 'floor',
        name: 'Floor',
        length_m,
        width_m,
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
      { kind: 'ratings', id: 'ratings', folded: false, title: 'Ratings', stack: 'floor' },
      { kind: 'paths', id: 'paths', folded: false, title: 'Paths', stack: 'floor', sound: 'airborne' },
    ],
    scenarios: [{ id: base, name: 'As built', mark: 0, parent: null, changes: {} }],
    shown: [base],
    reference: base,
    active: base,
  };
}

/**
 * The notebook in other units. Values stay what they are, but for a new one that nobody has touched: it begins anew, with
 * what is round in the units that are chosen.
 */
export function inUnits(notebook: Notebook, units: UnitSystem): Notebook {
  const { id, title } = notebook;
  const begun = (from: UnitSystem) => {
    const empty = emptyNotebook(Math.random, from);
    return { ...empty, id, title: BEGUN_TITLE.test(title) ? title : empty.title };
  };
  const isUntouched = JSON.stringify(notebook) === JSON.stringify(begun(notebook.units));
  return isUntouched ? begun(units) : setUnits(notebook, units);
}
