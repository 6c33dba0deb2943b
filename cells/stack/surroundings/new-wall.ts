/** Walls to begin with, so that there is something to change. Common practice, no source. */
import { findStack } from '#src/notebook/find.ts';
import { freshId } from '#src/notebook/fresh-id.ts';
import type { FlankingWall, Notebook } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import { WALL_FIELDS } from '#src/notebook/wall-fields.ts';

const HEIGHT_M = 2.5;

/** One wall for each side of the floor, of masonry, as the floor is in the active scenario. */
export function wallsAround(notebook: Notebook, stackId: string): readonly FlankingWall[] {
  const { length_m, width_m } = sides(notebook, stackId);
  const taken: string[] = [];
  return ['north', 'south', 'east', 'west'].map((side, i) => {
    const made = wall(notebook, stackId, taken, `${side} wall`, i < 2 ? length_m : width_m);
    taken.push(made.id);
    return made;
  });
}

/** One more wall along the floor's length. */
export function oneMoreWall(notebook: Notebook, stackId: string): FlankingWall {
  const walls = notebook.flanking.walls ?? [];
  const taken = walls.map((w) => w.id);
  return wall(notebook, stackId, taken, `wall ${walls.length + 1}`, sides(notebook, stackId).length_m);
}

function wall(
  notebook: Notebook,
  stackId: string,
  taken: readonly string[],
  name: string,
  length_m: number,
): FlankingWall {
  const { min, max } = WALL_FIELDS.junctionLength_m;
  return {
    kind: 'homogeneous',
    id: freshId(Math.random, taken),
    name,
    junctionLength_m: Math.min(Math.max(length_m, min), max),
    height_m: HEIGHT_M,
    junction: onJoists(notebook, stackId) ? 'joists' : 'tee',
    straightK_dB: 6,
    cornerK_dB: 9,
    material: 'calcium-silicate',
    thickness_m: 0.24,
  };
}

function sides(notebook: Notebook, stackId: string): { length_m: number; width_m: number } {
  const stack = findStack(notebook, stackId);
  const values = valuesOf(notebook, notebook.active);
  return { length_m: fieldValue(stack.length_m, values), width_m: fieldValue(stack.width_m, values) };
}

function onJoists(notebook: Notebook, stackId: string): boolean {
  const values = valuesOf(notebook, notebook.active);
  return findStack(notebook, stackId).layers.some(
    (layer) => layer.kind === 'cavity' && fieldValue(layer.joists, values) !== 'none',
  );
}
