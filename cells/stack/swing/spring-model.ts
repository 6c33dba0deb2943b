/** A stack as masses on springs: what the lowest resonances come from. */
import type { Construction, SupportKind } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import type { NamedFrequency } from '#src/acoustics/prediction.ts';
import { HELD_BY, interlayerStiffness_N_m3 } from '#src/acoustics/resonances.ts';
import type { Stack } from '#src/notebook/types.ts';

export interface SpringModel {
  /** From the upper room down. */
  readonly masses: readonly { readonly name: string; readonly surfaceMass_kg_m2: number }[];
  /** Between them, one fewer; stiffness per area at rest. */
  readonly springs: readonly { readonly name: string; readonly stiffness_N_m3: number }[];
}

/** The names are the stack's own where they can be told. @throws RangeError, TypeError as the engine does. */
export function springModel(construction: Construction, stack: Stack): SpringModel {
  const model = floorModel(construction, MODEL_CONSTANTS);
  const { leaves } = normaliseConstruction(construction);
  return {
    masses: model.plates.map(({ surfaceMass_kg_m2 }, i) => {
      const index = construction.layers.findIndex((l) => l.kind === 'leaf' && l.sheets.includes(leaves[i]!.sheets[0]!));
      return { name: stack.layers[index]?.name ?? `leaf ${i + 1}`, surfaceMass_kg_m2 };
    }),
    springs: model.interlayers.map((layer, i) => ({
      name: layer.kind === 'mat' ? layer.mat.name : cavityName(layer.cavity.support, layer.chain?.lower !== undefined),
      stiffness_N_m3: interlayerStiffness_N_m3(model, i),
    })),
  };
}

function cavityName(support: SupportKind, held: boolean): string {
  return held ? `air and ${HELD_BY[support]}` : 'air';
}

/** The resonances in which leaves move against each other, lowest first. */
export function bounces(resonances: readonly NamedFrequency[]): readonly NamedFrequency[] {
  return resonances
    .filter((r) => r.kind === 'mass-spring-mass' || r.kind === 'floating')
    .toSorted((a, b) => a.frequency_Hz - b.frequency_Hz);
}
