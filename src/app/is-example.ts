import type { Notebook } from '#src/notebook/types.ts';
import { DEMO_NOTEBOOKS } from './demo-notebooks.ts';
import { sameContent } from './same-content.ts';

/** Whether a notebook is one of the page's examples as it came. Out of reach of the server none is known. */
export async function isExample(notebook: Notebook): Promise<boolean> {
  for (const { url } of DEMO_NOTEBOOKS) {
    try {
      const response = await fetch(url);
      if (response.ok && (await sameContent((await response.json()) as Notebook, notebook))) return true;
    } catch {
      return false;
    }
  }
  return false;
}
