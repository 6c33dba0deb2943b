/** Which numbers of a construction are worth a question: "what if this one were 10 % more?" */
import type { Construction, ConstructionLayer, Leak } from '#src/acoustics/construction.ts';
import { leakArea_m2 } from '#src/acoustics/leak-area.ts';
import { numberAt } from '#src/acoustics/number-path.ts';
import type { StudiedNumber } from '#src/acoustics/number-study.ts';
import { everyNumber } from '#src/acoustics/sensitivities.ts';
import { leakTolerances, usualTolerance } from '#src/acoustics/usual-tolerances.ts';
import { usualSupport } from './usual-support.ts';

/**
 * Of the covering, of every layer from the upper room down and of the gaps that are open: all positive numbers, and what the
 * engine takes for those that a support leaves out.
 */
export function studiedNumbers(construction: Construction): readonly StudiedNumber[] {
  const covering = Object.entries(construction.covering ?? {}).flatMap(([name, value]) =>
    typeof value === 'number' && value > 0 ? [studied(`covering/${name}`, value)] : [],
  );
  const stated = everyNumber(construction).map((path) => studied(path, numberAt(construction, path)));
  const usual = construction.layers.flatMap((layer, i) => usualOnes(construction, layer, i));
  return [...covering, ...stated, ...usual, ...(construction.leaks ?? []).flatMap(leakNumbers)];
}

/** None of what is closed: a tenth more of one number does not open it. */
function leakNumbers(leak: Leak, index: number): readonly StudiedNumber[] {
  if (leakArea_m2(leak) === 0) return [];
  return Object.entries(leakTolerances(leak)).flatMap(([name, tolerance]) => {
    const value: unknown = Reflect.get(leak, name);
    return typeof value === 'number' && value > 0 ? [{ path: `leaks/${index}/${name}`, value, tolerance }] : [];
  });
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
