import type { Flanking, Notebook } from '../types.ts';

export function setFlanking(notebook: Notebook, flanking: Flanking): Notebook {
  return { ...notebook, flanking };
}
