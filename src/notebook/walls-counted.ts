/** Whether what goes around the floor by the walls is in its numbers: page and command go by this. */
import type { Sound } from '#src/acoustics/prediction.ts';
import type { Notebook } from './types.ts';

type Flanked = Pick<Notebook, 'flanking'>;

/** Whether the notebook counts anything around the floor: walls one by one need walls. */
export function countsAround({ flanking: { kind, walls } }: Flanked): boolean {
  return kind === 'by the walls' ? Boolean(walls?.length) : kind !== 'none';
}

/** A limit says nothing about footsteps: only walls that are described one by one count for impact sound. */
export function wallsCountFor(sound: Sound, notebook: Flanked): boolean {
  return countsAround(notebook) && (sound === 'airborne' || notebook.flanking.kind === 'by the walls');
}
