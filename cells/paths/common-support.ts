import type { SupportKind } from '#src/acoustics/construction.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Notebook } from '#src/notebook/types.ts';

/** How the leaf below is held in every cavity that a floor really has; undefined where they differ or there is none. */
export function commonSupport(notebook: Notebook, scenarioId: string, stackId: string): SupportKind | undefined {
  const kinds = new Set(supportsOf(notebook, scenarioId, stackId));
  return kinds.size === 1 ? [...kinds][0] : undefined;
}

/** The kinds of support of all cavities, from the upper one down. */
function supportsOf(notebook: Notebook, scenarioId: string, stackId: string): readonly SupportKind[] {
  try {
    const { interlayers } = normaliseConstruction(resolveStack(notebook, scenarioId, stackId));
    return interlayers.flatMap((layer) => (layer.kind === 'cavity' ? [layer.support] : []));
  } catch (error) {
    // What cannot be resolved has a message of its own.
    if (error instanceof RangeError) return [];
    throw error;
  }
}
