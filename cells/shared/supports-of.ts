import type { SupportKind } from '#src/acoustics/construction.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** How the leaf below is held in each cavity that a floor really has, every kind once; none where nothing is left of it. */
export function supportsOf(notebook: Notebook, scenarioId: string, stackId: string): ReadonlySet<SupportKind> {
  try {
    const { interlayers } = normaliseConstruction(resolveStack(notebook, scenarioId, stackId));
    return new Set(interlayers.flatMap((layer) => (layer.kind === 'cavity' ? [layer.support] : [])));
  } catch (error) {
    // What cannot be resolved has a message of its own.
    if (error instanceof RangeError) return new Set();
    throw error;
  }
}
