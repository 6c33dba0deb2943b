import type { Construction, ConstructionLayer } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS, type ModelConstants } from '#src/acoustics/model-constants.ts';
import { TransmissionLine } from '#src/acoustics/transmission-line.ts';
import { floor, sheet } from '../published/reference-constructions.ts';

/** A floor without anything that goes around it. */
export function isolated(...layers: Parameters<typeof floor>): Construction {
  const { flanking: _, ...rest } = floor(...layers);
  return rest;
}

/** The floor upside down, its mats declared so that under their new load they are as stiff as under the old one. */
export function turned(construction: Construction): Construction {
  const { plates, interlayers } = floorModel(construction, MODEL_CONSTANTS);
  const reversed = plates
    .flatMap(({ leaf }, i): ConstructionLayer[] => {
      const below = interlayers[i];
      return below ? [leaf, below.kind === 'mat' ? below.mat : below.cavity] : [leaf];
    })
    .reverse();
  const loaded = floorModel({ ...construction, layers: reversed }, MODEL_CONSTANTS).interlayers;
  const layers = reversed.map((layer, i) => {
    const under = i % 2 === 1 ? loaded[(i - 1) / 2] : undefined;
    if (layer.kind !== 'mat' || under?.kind !== 'mat') return layer;
    const wanted_N_m3 = layer.dynamicStiffness_N_m3;
    return { ...layer, dynamicStiffness_N_m3: wanted_N_m3 ** 2 / under.mat.dynamicStiffness_N_m3 };
  });
  return { ...construction, layers };
}

/** A sheet so soft that only its mass counts. */
export function limp(surfaceMass_kg_m2: number): ReturnType<typeof sheet> {
  return sheet('gypsum-board', 0.01, {
    density_kg_m3: surfaceMass_kg_m2 / 0.01,
    youngsModulus_Pa: 1e5,
    poissonRatio: 0,
    lossFactor: 0.01,
  });
}

/** The transfer matrices of a construction at one frequency. */
export function lineAt(
  construction: Construction,
  f_Hz: number,
  { constants = MODEL_CONSTANTS }: { constants?: ModelConstants } = {},
): TransmissionLine {
  const model = floorModel(construction, constants);
  return new TransmissionLine(model).prepare(f_Hz, 0.5);
}

/** Transmission coefficient of the unbounded floor at cos θ = u: |2 Z0 V_N|². */
export function tauAt(line: TransmissionLine, u: number): number {
  line.at(Math.sqrt(1 - u * u), u, false).march(true);
  const z0 = (1.204 * 343.2) / u;
  return 4 * z0 * z0 * line.velocity2.at(-1)!;
}

export const dB = (ratio: number): number => 10 * Math.log10(ratio);
