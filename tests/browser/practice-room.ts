/** The notebook that tests of the page and of cells show: four scenarios of one joist floor. Invented data. */
import type { Notebook } from '#src/notebook/types.ts';

export function practiceRoom(changes: Partial<Notebook> = {}): Notebook {
  return {
    format: 'slab-and-spring',
    version: 2,
    id: 'practice-room',
    title: 'Percussion above the reading room',
    units: 'SI',
    parameters: [
      { key: 'slab', label: 'slab thickness', quantity: 'length', value: 0, min: 0, max: 0.1, step: 0.001 },
      { key: 'density', label: 'slab density', quantity: 'density', value: 1760, min: 1000, max: 2400, step: 10 },
      {
        key: 'support',
        label: 'ceiling support',
        value: 'direct',
        choices: [
          { value: 'direct', label: 'screwed direct' },
          { value: 'resilient-channel', label: 'resilient channel' },
          { value: 'clips', label: 'isolation clips' },
        ],
      },
      {
        key: 'fill',
        label: 'cavity fill',
        value: 'none',
        choices: [
          { value: 'none', label: 'empty' },
          { value: 'glass-fibre', label: 'glass fibre' },
        ],
      },
    ],
    stacks: [
      {
        id: 'floor',
        name: 'Floor of the practice room',
        length_m: 4,
        width_m: 2.5,
        covering: 'none',
        layers: [
          {
            kind: 'leaf',
            id: 'deck',
            name: 'deck',
            contact: 'loose',
            sheets: [
              {
                material: 'cellular-concrete',
                thickness_m: { parameter: 'slab' },
                density_kg_m3: { parameter: 'density' },
              },
              { material: 'plywood', thickness_m: 0.019 },
            ],
          },
          {
            kind: 'cavity',
            id: 'joists',
            name: 'joists',
            joists: 'solid-timber',
            depth_m: 0.235,
            joistWidth_m: 0.038,
            joistSpacing_m: 0.406,
            support: { parameter: 'support' },
            fill: { parameter: 'fill' },
            fillThickness_m: 0.15,
          },
          {
            kind: 'leaf',
            id: 'ceiling',
            name: 'ceiling',
            contact: 'loose',
            sheets: [{ material: 'gypsum-board', thickness_m: 0.0159 }],
          },
        ],
      },
    ],
    materials: [],
    flanking: { kind: 'ordinary', R500_dB: 58, slope_dB_per_octave: 3 },
    cells: [
      {
        kind: 'commentary',
        id: 'intro',
        folded: false,
        text: 'The percussion club practises above the reading room. The floor reaches [41](value:floor/stc) STC now; that is [+0](value:floor/stc-gain) against the reference.\n\nWhat gains more: **mass** or **decoupling**?\n\n> Answer: two masses and what lies between\n> Drag the slab and see. Two masses on a spring:\n> [mass-spring-mass](formula:mass-spring-mass)',
      },
      { kind: 'parameters', id: 'knobs', folded: false, title: 'Try it', parameters: [] },
      { kind: 'stack', id: 'section', folded: false, stack: 'floor' },
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
      { kind: 'paths', id: 'paths', folded: false, title: 'What rules each band', stack: 'floor', sound: 'airborne' },
    ],
    scenarios: [
      { id: 'base', name: 'As built', mark: 0, parent: null, changes: {} },
      { id: 'slab', name: 'Slab on top', mark: 1, parent: 'base', changes: { slab: 0.038 } },
      {
        id: 'hung',
        name: 'Ceiling on channel',
        mark: 2,
        parent: 'base',
        changes: { support: 'resilient-channel', fill: 'glass-fibre' },
      },
      {
        id: 'both',
        name: 'Both',
        mark: 3,
        parent: 'slab',
        changes: { support: 'resilient-channel', fill: 'glass-fibre' },
      },
    ],
    shown: ['base', 'slab', 'hung', 'both'],
    reference: 'base',
    active: 'slab',
    ...changes,
  };
}
