/** What of the sound that goes around by the walls is in the numbers shown, in words. */
import type { Flanking } from '#src/notebook/types.ts';

/** "ordinary walls, assumed": to stand in brackets. */
export function aroundKind({ kind }: Flanking): string {
  if (kind === 'by the walls') return 'computed wall by wall';
  return kind === 'own' ? 'as a limit of your own' : `as a limit, ${kind} walls, assumed`;
}
