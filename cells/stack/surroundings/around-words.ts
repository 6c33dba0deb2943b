import { html, type TemplateResult } from 'lit';
import type { Notebook, Stack } from '#src/notebook/types.ts';

const WAYS: Readonly<Record<Notebook['flanking']['kind'], string>> = {
  none: 'nothing around',
  'well isolated': 'well isolated walls, assumed',
  ordinary: 'ordinary walls, assumed',
  weak: 'weak walls, assumed',
  own: 'a limit of its own around',
  'by the walls': 'wall by wall',
};

/** The ways past a floor, in a few words: "ordinary walls, assumed; 2 gaps". */
export function aroundInWords({ flanking }: Notebook, { leaks = [] }: Stack): string {
  const gaps = leaks.length === 0 ? 'no gaps' : leaks.length === 1 ? '1 gap' : `${leaks.length} gaps`;
  return `${WAYS[flanking.kind]}; ${gaps}`;
}

/** The same as a line under the drawing, on paper too, with the way to change it. */
export function aroundNote(notebook: Notebook, stack: Stack, onChange: () => void): TemplateResult {
  return html`<p class="note around">
    Ways past the floor: ${aroundInWords(notebook, stack)}.
    <button type="button" class="quiet screen-only" @click=${onChange}>Change these ways</button>
  </p>`;
}
