import type { Notebook } from '../types.ts';

export function setTitle(notebook: Notebook, title: string): Notebook {
  return { ...notebook, title };
}
