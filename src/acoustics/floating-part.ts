import type { Construction } from './construction.ts';
import { normaliseConstruction } from './normalise-construction.ts';

/** The floor without covering, uppermost leaf and mat; undefined where the uppermost leaf does not lie on a mat. */
export function belowFloatingPart({ covering: _, ...bare }: Construction): Construction | undefined {
  const { leaves, interlayers } = normaliseConstruction(bare);
  if (interlayers[0]?.kind !== 'mat') return undefined;
  const [, ...rest] = leaves;
  return { ...bare, layers: rest.flatMap((leaf, i) => (i === 0 ? [leaf] : [interlayers[i]!, leaf])) };
}
