/**
 * What the single numbers of a floor count wherever they stand, in texts and beside sliders too: what the first cell of its
 * ratings counts.
 */
import type { Notebook, RatingsCell } from '#src/notebook/types.ts';
import type { Result, ResultsView } from '../contract.ts';
import { countsAround } from './around-counted.ts';
import { ofFloorAlone } from './floor-alone.ts';

export function isRatedAlone({ cells }: Notebook, stackId: string): boolean {
  const leading = cells.find((cell): cell is RatingsCell => cell.kind === 'ratings' && cell.stack === stackId);
  return leading?.floorAlone ?? false;
}

export function ratedResult(notebook: Notebook, results: ResultsView, scenarioId: string, stackId: string): Result {
  const result = results.of(scenarioId, stackId);
  return isRatedAlone(notebook, stackId) ? ofFloorAlone(result) : result;
}

/**
 * "floor alone"; undefined where nothing goes around the floor, and both are the same. A limit says nothing about footsteps,
 * so that only walls that are described one by one count for impact sound.
 */
export function countedWords(notebook: Notebook, stackId: string, sound: 'airborne' | 'impact'): string | undefined {
  if (!countsAround(notebook)) return undefined;
  const isCounted = sound === 'airborne' || notebook.flanking.kind === 'by the walls';
  return isCounted && !isRatedAlone(notebook, stackId) ? 'floor and walls together' : 'floor alone';
}
