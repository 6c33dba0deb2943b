/** A small notebook of the percussion club's floor, for tests of cells. Numbers are invented. */
import { FORMAT, type Notebook, VERSION } from '#src/notebook/types.ts';

const NAMES = [
  'Existing floor',
  'Slab on top',
  'Ceiling on resilient channel',
  'Both, and a second layer of board because the marching band rehearses on Thursdays',
  'Clips',
  'Clips and slab',
  'Separate ceiling joists',
  'Everything',
] as const;

/** With one to eight scenarios, all shown; the last one is active. */
export function percussionNotebook(scenarios = 3, changes: Partial<Notebook> = {}): Notebook {
  const ids = NAMES.slice(0, scenarios).map((_, i) => `s${i + 1}`);
  return {
    format: FORMAT,
    version: VERSION,
    id: 'percussion',
    title: 'Percussion above the reading room',
    units: 'SI',
    parameters: [
      {
        key: 'slab',
        label: 'slab thickness',
        quantity: 'length',
        value: 0,
        min: 0,
        max: 0.1,
        step: 0.001,
      },
      {
        key: 'support',
        label: 'ceiling support',
        choices: [
          { value: 'direct', label: 'screwed direct' },
          { value: 'resilient-channel', label: 'resilient channel' },
          { value: 'clips', label: 'isolation clips' },
        ],
        value: 'direct',
      },
    ],
    stacks: [
      {
        id: 'floor',
        name: 'Practice room floor',
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
              { material: 'cellular-concrete', thickness_m: { parameter: 'slab' } },
              { material: 'osb', thickness_m: 0.0183 },
            ],
          },
          {
            kind: 'cavity',
            id: 'bay',
            name: 'joist bay',
            joists: 'solid-timber',
            depth_m: 0.235,
            joistWidth_m: 0.038,
            joistSpacing_m: 0.406,
            support: { parameter: 'support' },
            fill: 'glass-fibre',
            fillThickness_m: 0.09,
          },
          {
            kind: 'leaf',
            id: 'ceiling',
            name: 'ceiling',
            contact: 'loose',
            sheets: [
              { material: 'gypsum-board', thickness_m: 0.0159 },
              { material: 'gypsum-board', thickness_m: 0.0127 },
            ],
          },
        ],
      },
    ],
    materials: [],
    flanking: { kind: 'ordinary', R500_dB: 58, slope_dB_per_octave: 3 },
    cells: [
      { kind: 'stack', id: 'c-stack', folded: false, stack: 'floor' },
      {
        kind: 'curves',
        id: 'c-curves',
        folded: false,
        title: 'What comes through',
        stack: 'floor',
        quantity: 'airborne',
        overlays: [],
      },
      { kind: 'paths', id: 'c-paths', folded: false, title: 'Why', stack: 'floor', sound: 'airborne' },
    ],
    scenarios: ids.map((id, i) => ({
      id,
      name: NAMES[i]!,
      parent: i === 0 ? null : 's1',
      changes: i === 0 ? {} : CHANGES[i]!,
    })),
    shown: ids,
    reference: 's1',
    active: ids.at(-1)!,
    ...changes,
  };
}

const CHANGES = [
  {},
  { slab: 0.038 },
  { support: 'resilient-channel' },
  { slab: 0.038, support: 'resilient-channel' },
  { support: 'clips' },
  { slab: 0.038, support: 'clips' },
  { slab: 0.05 },
  { slab: 0.076, support: 'clips' },
] as const;
