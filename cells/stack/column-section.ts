import type { Notebook, Stack } from '#src/notebook/types.ts';
import { valuesOf } from '#src/notebook/values.ts';
import { hatchesOf } from './section/hatch-of.ts';
import type { Section } from './section/section.ts';
import { sectionOf } from './section/section-of.ts';
import { constructionInWords } from './section/section-words.ts';
import type { StackColumn } from './stack-columns.ts';

export type ColumnSection =
  | { readonly section: Section; readonly words: string }
  /** Why there is nothing to draw: a floor of thickness 0, a parameter that is gone. */
  | { readonly problem: string };

/** The section of one scenario, and what it is made of in words. */
export function columnSection(notebook: Notebook, stack: Stack, column: StackColumn, width_m: number): ColumnSection {
  const { scenario, construction, problem } = column;
  if (!construction) return { problem: problem ?? 'This floor cannot be drawn.' };
  try {
    const section = sectionOf(construction, { width_m, hatchOf: hatchesOf(stack, valuesOf(notebook, scenario.id)) });
    return { section, words: constructionInWords(construction, notebook.units) };
  } catch (error) {
    if (error instanceof RangeError)
      return { problem: 'Nothing is left of this floor: every sheet has a thickness of 0.' };
    throw error;
  }
}
