import type { ImpactBands } from './band-energies.ts';
import { BandSums } from './band-sums.ts';
import { belowFloatingPart } from './floating-part.ts';
import { type FloorModel, floorModel } from './floor-model.ts';
import { naturalFrequency_Hz } from './natural-frequency.ts';
import type { Quadrature } from './quadrature.ts';
import { floatingImprovement_dB } from './simple/floating-floor.ts';
import { exactBandOf } from './standards/iec-61260.ts';

/** The limit fades out below f0 as f^6: our own, so that it stays continuous. */
const FADE = 6;

/**
 * The most that a floor laid on a mat takes off the impact sound of what is below it: ΔL ≤ 30 lg(f/f0) for screeds cast
 * in one piece, 40 lg(f/f0) for dry ones, of both in one leaf by their shares of its stiffness, f0 = √(s'/m1)/2π
 * (ISO 12354-2:2017, Annex C; from memory). The waves of the matrices alone give 40 lg and more; real screeds bend back
 * and carry sound across stiff spots.
 *
 * On a light deck the screed's mass helps besides: 20 lg(1 + m1/m2) is allowed on top. Below f0 the limit fades out.
 * A covering softens the blow before it comes to the screed: what is below is taken as struck through it too.
 *
 * Where the struck leaf lies on a mat, raises each band of `impact` that gains more, both paths by the same factor.
 */
export function raiseToFloatingLimit(
  model: FloorModel,
  bands_Hz: readonly number[],
  quadrature: Quadrature,
  impact: ImpactBands,
): void {
  const layer = model.interlayers[0];
  const { covering } = model.construction;
  const below = belowFloatingPart(model.construction);
  if (layer?.kind !== 'mat' || !below) return;
  const [floating, deck] = [model.plates[0]!, model.plates[1]!];
  const { castShare: cast } = floating;
  const resonance_Hz = naturalFrequency_Hz(layer.mat.dynamicStiffness_N_m3, floating.surfaceMass_kg_m2);
  const massGain = (1 + floating.surfaceMass_kg_m2 / deck.surfaceMass_kg_m2) ** 2;
  const struck = { ...below, ...(covering && { covering }) };
  const rest = new BandSums(floorModel(struck, model.constants, model.air), quadrature, 'struck').bands(bands_Hz);
  rest.forEach(({ struckDirect, struckSupports }, band) => {
    const f_Hz = exactBandOf(bands_Hz[band]!).middle_Hz;
    const improvement_dB =
      cast * floatingImprovement_dB(f_Hz, resonance_Hz, 'plate') +
      (1 - cast) * floatingImprovement_dB(f_Hz, resonance_Hz, 'local');
    const passed = 10 ** (-improvement_dB / 10);
    const faded = Math.min((f_Hz / resonance_Hz) ** FADE, 1);
    const least = ((struckDirect + struckSupports) / massGain) * passed * faded;
    const total = impact.direct[band]! + impact.supports[band]!;
    if (total >= least) return;
    impact.direct[band]! *= least / total;
    impact.supports[band]! *= least / total;
  });
}
