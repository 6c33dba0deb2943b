import type { CavityLayer, LeafLayer, Notebook } from '#src/notebook/types.ts';

/** A deck and a ceiling with one linked field of every sort; base, a fork and a fork of the fork. */
export function smallNotebook(): Notebook {
  const deck: LeafLayer = {
    kind: 'leaf',
    id: 'deck',
    name: 'deck',
    contact: 'loose',
    sheets: [
      { material: 'cellular-concrete', thickness_m: { parameter: 'slab' }, density_kg_m3: { parameter: 'density' } },
      { material: 'plywood', thickness_m: 0.019 },
    ],
  };
  const cavity: CavityLayer = {
    kind: 'cavity',
    id: 'joists',
    name: 'joists',
    joists: 'solid-timber',
    depth_m: 0.235,
    joistWidth_m: 0.038,
    joistSpacing_m: 0.406,
    support: { parameter: 'support' },
    fill: 'glass-fibre',
    fillThickness_m: 0.1,
  };
  const ceiling: LeafLayer = {
    kind: 'leaf',
    id: 'ceiling',
    name: 'ceiling',
    contact: 'loose',
    sheets: [{ material: 'gypsum-board', thickness_m: 0.0159 }],
  };
  return {
    format: 'slab-and-spring',
    version: 2,
    id: 'small',
    title: 'Practice room',
    units: 'SI',
    parameters: [
      { key: 'slab', label: 'slab thickness', quantity: 'length', value: 0.038, min: 0, max: 0.1, step: 0.001 },
      { key: 'density', label: 'slab density', quantity: 'density', value: 1760, min: 500, max: 2500, step: 10 },
      {
        key: 'support',
        label: 'ceiling support',
        value: 'direct',
        choices: [
          { value: 'direct', label: 'screwed direct' },
          { value: 'clips', label: 'isolation clips' },
        ],
      },
      { key: 'spare', label: 'spare', quantity: 'ratio', value: 0.5, min: 0, max: 1, step: 0.1 },
    ],
    stacks: [
      {
        id: 'floor',
        name: 'Floor',
        length_m: 4,
        width_m: 2.5,
        covering: 'none',
        layers: [deck, cavity, ceiling],
      },
    ],
    materials: [
      {
        kind: 'sheet',
        key: 'own-board',
        name: 'club board',
        source: 'invented for tests',
        form: 'board',
        density_kg_m3: 900,
        youngsModulus_Pa: 3e9,
        poissonRatio: 0.3,
        lossFactor: 0.02,
      },
    ],
    flanking: { kind: 'ordinary', R500_dB: 60, slope_dB_per_octave: 2 },
    cells: [
      { kind: 'commentary', id: 'intro', folded: false, text: 'The club moves in.' },
      { kind: 'parameters', id: 'knobs', folded: false, title: 'Try', parameters: ['slab', 'spare'] },
      { kind: 'stack', id: 'drawing', folded: false, stack: 'floor' },
      {
        kind: 'curves',
        id: 'curves',
        folded: true,
        title: 'Transmission loss',
        stack: 'floor',
        quantity: 'airborne',
        overlays: ['mass-law'],
      },
      { kind: 'ratings', id: 'ratings', folded: false, title: 'Ratings', stack: 'floor' },
      { kind: 'paths', id: 'paths', folded: false, title: 'Paths', stack: 'floor', sound: 'airborne' },
    ],
    scenarios: [
      { id: 'existing', name: 'Existing', mark: 0, parent: null, changes: {} },
      { id: 'heavy', name: 'Heavy', mark: 1, parent: 'existing', changes: { slab: 0.076 } },
      { id: 'both', name: 'Both', mark: 2, parent: 'heavy', changes: { support: 'clips' } },
    ],
    shown: ['existing', 'heavy', 'both'],
    reference: 'existing',
    active: 'heavy',
  };
}
