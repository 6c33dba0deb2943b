import type { Construction } from '#src/acoustics/construction.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS, type ModelConstants } from '#src/acoustics/model-constants.ts';
import { TransmissionLine } from '#src/acoustics/transmission-line.ts';
import { floor, sheet } from '../published/reference-constructions.ts';

/** A floor without anything that goes around it. */
export function isolated(...layers: Parameters<typeof floor>): Construction {
  const { flanking: _, ...rest } = floor(...layers);
  return rest;
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
