import type { Cavity, Construction } from '#src/acoustics/construction.ts';
import { usualSupport } from '#src/notebook/usual-support.ts';

/**
 * The same construction with the engine's usual values written where a cavity states none, so that they can be varied.
 *
 * What follows from another number stays unwritten: channel is held where it crosses a joist; hangers that state their
 * stiffness have the frequency that comes of it, and those that do not are known by their frequency.
 */
export function withUsualNumbers(construction: Construction): Construction {
  const layers = construction.layers.map((layer, i) =>
    layer.kind === 'cavity' ? { ...layer, ...usual(construction, layer, i), ...layer } : layer,
  );
  return { ...construction, layers };
}

function usual(construction: Construction, cavity: Cavity, index: number): Partial<Cavity> {
  const { supportStiffness_N_m, hangerFrequency_Hz, supportPointSpacing_m, ...rest } = usualSupport(
    construction,
    index,
  );
  const isStated = cavity.supportStiffness_N_m !== undefined;
  const spring = cavity.support === 'hangers' ? !isStated && { hangerFrequency_Hz } : { supportStiffness_N_m };
  const written = { ...rest, ...(cavity.support !== 'resilient-channel' && { supportPointSpacing_m }), ...spring };
  return Object.fromEntries(Object.entries(written).filter(([, value]) => value !== undefined));
}
