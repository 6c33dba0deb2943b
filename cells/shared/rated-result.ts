/**
 * What the single numbers of a floor count wherever they stand, in texts and beside sliders too: what the first cell of its
 * ratings counts.
 */
import type { Sound } from '#src/acoustics/prediction.ts';
import { apparentName } from '#src/acoustics/ratings/apparent-names.ts';
import type { Notebook, RatingsCell } from '#src/notebook/types.ts';
import { countsAround, wallsCountFor } from '#src/notebook/walls-counted.ts';
import type { Result, ResultsView } from '../contract.ts';
import { ofFloorAlone } from './floor-alone.ts';

export function isRatedAlone({ cells }: Notebook, stackId: string): boolean {
  const leading = cells.find((cell): cell is RatingsCell => cell.kind === 'ratings' && cell.stack === stackId);
  return leading?.floorAlone ?? false;
}

export function ratedResult(notebook: Notebook, results: ResultsView, scenarioId: string, stackId: string): Result {
  const result = results.of(scenarioId, stackId);
  return isRatedAlone(notebook, stackId) ? ofFloorAlone(result) : result;
}

export function countsWalls(notebook: Notebook, sound: Sound, floorAlone: boolean): boolean {
  return !floorAlone && wallsCountFor(sound, notebook);
}

/** Its name with the walls where they are counted: "ASTC" for "STC". */
export function ratedName(notebook: Notebook, stackId: string, sound: Sound, name: string): string {
  return countsWalls(notebook, sound, isRatedAlone(notebook, stackId)) ? apparentName(name) : name;
}

/** "floor alone"; undefined where nothing goes around the floor, and both are the same. */
export function countedWords(notebook: Notebook, stackId: string, sound: Sound): string | undefined {
  if (!countsAround(notebook)) return undefined;
  return countsWalls(notebook, sound, isRatedAlone(notebook, stackId)) ? 'floor and walls together' : 'floor alone';
}
