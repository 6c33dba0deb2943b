import type { Cavity } from './construction.ts';

/** Where a leaf is to be screwed to joists that are not there, nothing but its edges holds it, as panes of glass. */
export function isHeldAtEdges({ joists, support }: Pick<Cavity, 'joists' | 'support'>): boolean {
  return joists === 'none' && support === 'direct';
}
