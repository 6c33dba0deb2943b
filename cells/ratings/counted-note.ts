import type { Notebook, RatingsCell } from '#src/notebook/types.ts';
import { aroundKind, countsAround } from '../shared/around-counted.ts';
import { isRatedAlone } from '../shared/rated-result.ts';

/** What is rated: the floor with or without its walls; and whether the rest of the page counts the same. */
export function countedNote(notebook: Notebook, { stack, floorAlone = false }: RatingsCell): string {
  if (!countsAround(notebook))
    return 'Predicted as in a laboratory, where nothing goes around the floor; a building is worse.';
  const how = aroundKind(notebook.flanking);
  const isSameElsewhere = isRatedAlone(notebook, stack) === floorAlone;
  const elsewhere = isSameElsewhere
    ? ''
    : ' Texts and the figures beside the sliders go by the first ratings of this floor.';
  if (floorAlone) {
    const where = isSameElsewhere ? 'here, in texts and beside the sliders' : 'here';
    return `The floor alone, as in a laboratory. What goes around by the walls (${how}) is left out ${where}; curves and paths count it.${elsewhere}`;
  }
  if (notebook.flanking.kind === 'by the walls')
    return `Floor and walls together (${how}), as in apparent values: R′w, ASTC, L′n,w, AIIC.${elsewhere}`;
  return `Airborne: floor and walls together (${how}), as in apparent values: R′w, ASTC. Impact: the floor alone, since a limit says nothing about footsteps.${elsewhere}`;
}
