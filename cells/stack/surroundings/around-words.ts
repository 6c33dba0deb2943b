import type { Notebook, Stack } from '#src/notebook/types.ts';

const WAYS: Readonly<Record<Notebook['flanking']['kind'], string>> = {
  none: 'nothing around',
  'well isolated': 'well isolated walls',
  ordinary: 'ordinary walls',
  weak: 'weak walls',
  own: 'own limit',
  'by the walls': 'wall by wall',
};

/** What passes a floor by, in a few words: "ordinary walls, 2 gaps". */
export function aroundInWords({ flanking }: Notebook, { leaks = [] }: Stack): string {
  const gaps = leaks.length === 0 ? 'no gaps' : leaks.length === 1 ? '1 gap' : `${leaks.length} gaps`;
  return `${WAYS[flanking.kind]}, ${gaps}`;
}
