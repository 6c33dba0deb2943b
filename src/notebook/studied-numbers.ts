/** Which numbers of a construction are worth a question: "what if this one were 10 % more?" */
import type { Construction, ConstructionLayer } from '#src/acoustics/construction.ts';
import { numberAt } from '#src/acoustics/number-path.ts';
import type { StudiedNumber } from '#src/acoustics/number-study.ts';
import { everyNumber } from '#src/acoustics/sensitivities.ts';
import { usualTolerance } from '#src/acoustics/usual-tolerances.ts';
import { usualSupport } from './usual-support.ts';

/**
 * Of the covering and of every layer from the upper room down: all positive numbers, and what the engine takes for those
 * that a support leaves out.
 */
export function studiedNumbers(construction: Construction): readonly StudiedNumber[] {
  const covering = Object.entries(construction.covering ?? {}).flatMap(([name, value]) =>
    typeof value === 'number' && value > 0 ? [studied(`covering/${name}`, value)] : [],
  );
  const stated = everyNumber(construction).map((path) => studied(path, numberAt(construction, path)));
  return [...covering, ...stated, ...construction.layers.flatMap((layer, i) => usualOnes(construction, layer, i))];
}

function studied(path: string, value: number): StudiedNumber {
  return { path, value, tolerance: usualTolerance(path.split('/').at(-1)!) };
}

/** Hangers are known by their frequency alone: stiffness and frequency would contradict each other. */
function usualOnes(construction: Construction, layer: ConstructionLayer, index: number): readonly StudiedNumber[] {
  if (layer.kind !== 'cavity') return [];
  const { supportStiffness_N_m, hangerFrequency_Hz, ...usual } = usualSupport(construction, index);
  const spring = layer.support === 'hangers' ? { hangerFrequency_Hz } : { supportStiffness_N_m };
  const hasSpring = layer.hangerFrequency_Hz !== undefined || layer.supportStiffness_N_m !== undefined;
  return Object.entries({ ...usual, ...(hasSpring ? {} : spring) }).flatMap(([name, value]) =>
    value !== undefined && value > 0 && !(name in layer) ? [studied(`layers/${index}/${name}`, value)] : [],
  );
}
