import { leakArea_m2 } from '#src/acoustics/leak-area.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook, RatingsCell } from '#src/notebook/types.ts';
import { countsAround } from '#src/notebook/walls-counted.ts';
import { aroundKind } from '../shared/around-counted.ts';
import { isRatedAlone } from '../shared/rated-result.ts';

/** What is rated: the floor with or without its walls, its gaps always; and whether the rest of the page counts the same. */
export function countedNote(notebook: Notebook, { stack, floorAlone = false }: RatingsCell): string {
  const gaps = gapsCounted(notebook, stack);
  if (!countsAround(notebook))
    return `Predicted as in a laboratory, where nothing goes around the floor; a building is worse.${gaps}`;
  const how = aroundKind(notebook.flanking);
  const isSameElsewhere = isRatedAlone(notebook, stack) === floorAlone;
  const elsewhere = isSameElsewhere
    ? ''
    : ' Texts and the figures beside the sliders go by the first ratings of this floor.';
  if (floorAlone) {
    const where = isSameElsewhere ? 'here, in texts and beside the sliders' : 'here';
    return `The floor alone, as in a laboratory.${gaps} What goes around by the walls (${how}) is left out ${where}; curves and paths count it.${elsewhere}`;
  }
  if (notebook.flanking.kind === 'by the walls')
    return `Floor and walls together (${how}), as in apparent values: R′w, ASTC, L′n,w, AIIC.${gaps}${elsewhere}`;
  return `Airborne: floor and walls together (${how}), as in apparent values: R′w, ASTC. Impact: the floor alone, since a limit says nothing about footsteps.${gaps}${elsewhere}`;
}

/** Those that are open in any shown scenario, by name. */
function gapsCounted(notebook: Notebook, stackId: string): string {
  const open = notebook.shown
    .flatMap((scenario) => resolveStack(notebook, scenario, stackId).leaks ?? [])
    .filter((leak) => leakArea_m2(leak) > 0)
    .map((leak) => leak.name);
  const names = [...new Set(open)];
  return names.length > 0 ? ` Airborne sound through its gaps is counted too: ${names.join(', ')}.` : '';
}
