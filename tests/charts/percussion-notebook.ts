/** The practice room with one to eight scenarios, all shown and the last one active, for tests of pictures. Invented. */
import type { Notebook, Scenario } from '#src/notebook/types.ts';
import { practiceRoom } from '../browser/practice-room.ts';

const SCENARIOS: readonly (readonly [name: string, changes: Scenario['changes']])[] = [
  ['Existing floor', {}],
  ['Slab on top', { slab: 0.038 }],
  ['Ceiling on resilient channel', { support: 'resilient-channel' }],
  [
    'Both, and a second layer of board because the marching band rehearses on Thursdays',
    { slab: 0.038, support: 'resilient-channel' },
  ],
  ['Clips', { support: 'clips' }],
  ['Clips and slab', { slab: 0.038, support: 'clips' }],
  ['Thicker slab', { slab: 0.05 }],
  ['Everything', { slab: 0.076, support: 'clips', fill: 'glass-fibre' }],
];

export function percussionNotebook(count = 3, changes: Partial<Notebook> = {}): Notebook {
  const scenarios = SCENARIOS.slice(0, count).map(([name, changed], i) => ({
    id: `s${i + 1}`,
    name,
    mark: i,
    parent: i === 0 ? null : 's1',
    changes: changed,
  }));
  const shown = scenarios.map((s) => s.id);
  return practiceRoom({
    scenarios,
    shown,
    reference: 's1',
    active: shown.at(-1)!,
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
    ...changes,
  });
}
