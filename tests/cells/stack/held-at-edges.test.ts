import { expect, test } from 'vitest';
import { isLayerHeldAtEdges } from '#cells/stack/held-at-edges.ts';
import { constructionInWords } from '#cells/stack/section/section-words.ts';
import { cavity, floor, leaf, sheet } from '../../published/reference-constructions.ts';

const GAP = { id: 'gap', name: 'gap', kind: 'cavity', depth_m: 0.1, joistWidth_m: 0.04, joistSpacing_m: 0.4 } as const;
const held = (joists: 'none' | 'solid-timber', support: 'direct' | 'hangers') =>
  isLayerHeldAtEdges({ ...GAP, joists, support, fill: 'none', fillThickness_m: 0 }, {});

test('a ceiling screwed to joists that are not there counts as held at its edges, and no other does', () => {
  expect(held('none', 'direct')).toBe(true);
  expect(held('none', 'hangers')).toBe(false);
  expect(held('solid-timber', 'direct')).toBe(false);
});

test('the section says so', () => {
  const panes = (joists: 'none' | 'solid-timber') =>
    floor(
      leaf([sheet('glass', 0.006)]),
      cavity({ joists, support: 'direct', depth_m: 0.05 }),
      leaf([sheet('glass', 0.004)]),
    );
  expect(constructionInWords(panes('none'), 'SI')).toContain('ceiling: held at its edges alone');
  expect(constructionInWords(panes('solid-timber'), 'SI')).toContain('ceiling: screwed direct');
});
