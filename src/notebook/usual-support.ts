import type { Cavity, Construction, JoistKind, Leaf, Sheet, SupportKind } from '#src/acoustics/construction.ts';
import { floorEdges } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { naturalFrequency_Hz } from '#src/acoustics/natural-frequency.ts';
import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';
import { supportChain } from '#src/acoustics/supports.ts';
import type { OptionalCavityField } from './optional-cavity-fields.ts';

/**
 * What the engine takes where fields of a cavity are absent, found by asking the engine; a field that it does not read
 * for this kind of support stays absent.
 */
export function usualSupport(construction: Construction, index: number): Partial<Record<OptionalCavityField, number>> {
  const cavity = construction.layers[index];
  if (cavity?.kind !== 'cavity') return {};
  const supportHeight_m = plain(cavityDepth_m(cavity) - cavity.depth_m);
  const carried_kg_m2 = carriedMass_kg_m2(construction, index);
  const chain = supportChain(cavity, carried_kg_m2, floorEdges(construction), MODEL_CONSTANTS);
  if (!chain?.lower) return { supportHeight_m };
  const { lower, spring } = chain;
  const isDirect = cavity.support === 'direct';
  // Direct fastenings to steel are springs along the joist: their stiffness is one per metre of it.
  const spread = isDirect ? cavity.joistSpacing_m : lower.line_m * lower.point_m;
  const isHung = cavity.support === 'hangers' && carried_kg_m2 > 0;
  return {
    supportHeight_m,
    supportPointSpacing_m: lower.point_m,
    ...(!isDirect && { supportLineSpacing_m: lower.line_m }),
    ...(spring && { supportStiffness_N_m: plain(spring.stiffness_N_m3 * spread) }),
    ...(spring && isHung && { hangerFrequency_Hz: plain(naturalFrequency_Hz(spring.stiffness_N_m3, carried_kg_m2)) }),
  };
}

/**
 * The fields that say something about a ceiling held in this way, found by asking the engine about a floor that has one: a
 * ceiling on joists of its own has no fastenings to space, only a height.
 */
export function fieldsOfSupport(joists: JoistKind, support: SupportKind): ReadonlySet<OptionalCavityField> {
  const leaf: Leaf = { kind: 'leaf', contact: 'loose', sheets: [ANY_BOARD] };
  const cavity: Cavity = { ...ANY_CAVITY, joists, support };
  const floor = { length_m: 4, width_m: 3, layers: [leaf, cavity, leaf] };
  return new Set(Object.keys(usualSupport(floor, 1)) as OptionalCavityField[]);
}

const ANY_BOARD: Sheet = {
  name: '',
  form: 'board',
  thickness_m: 0.01,
  density_kg_m3: 700,
  youngsModulus_Pa: 2e9,
  poissonRatio: 0.3,
  lossFactor: 0.03,
};

const ANY_CAVITY = { kind: 'cavity', depth_m: 0.2, joistWidth_m: 0.04, joistSpacing_m: 0.4, fill: [] } as const;

function carriedMass_kg_m2({ layers }: Construction, above: number): number {
  const leaves = layers.slice(above).filter((layer) => layer.kind === 'leaf');
  return leaves.flatMap((leaf) => leaf.sheets).reduce((sum, s) => sum + s.thickness_m * s.density_kg_m3, 0);
}

/** Without the last digits, which the way there and back has spoiled. */
function plain(value: number): number {
  return Number(value.toPrecision(12));
}
