/** The walls beside the floor: add, change, remove. They belong to the notebook, whatever kind of flanking is chosen. */
import type { FlankingWall, Notebook } from '../types.ts';

/** @throws RangeError if a wall has the id already. */
export function addWall(notebook: Notebook, wall: FlankingWall): Notebook {
  return withWalls(notebook, (walls) => {
    if (walls.some((w) => w.id === wall.id)) throw new RangeError(`wall id must be new, got "${wall.id}"`);
    return [...walls, wall];
  });
}

/** Replaces the wall of the same id. */
export function updateWall(notebook: Notebook, wall: FlankingWall): Notebook {
  return withWalls(notebook, (walls) => {
    requireWall(walls, wall.id);
    return walls.map((w) => (w.id === wall.id ? wall : w));
  });
}

export function removeWall(notebook: Notebook, id: string): Notebook {
  return withWalls(notebook, (walls) => {
    requireWall(walls, id);
    return walls.filter((w) => w.id !== id);
  });
}

function withWalls(notebook: Notebook, change: (walls: readonly FlankingWall[]) => readonly FlankingWall[]): Notebook {
  const { flanking } = notebook;
  return { ...notebook, flanking: { ...flanking, walls: change(flanking.walls ?? []) } };
}

function requireWall(walls: readonly FlankingWall[], id: string): void {
  if (!walls.some((wall) => wall.id === id)) throw new RangeError(`wall must be one of the notebook's, got "${id}"`);
}
