import type { FlankingWall } from './construction.ts';
import { THIRD_OCTAVES_HZ } from './standards/iec-61260.ts';
import { REFERENCE_THIRD } from './standards/iso-717-1.ts';
import { homogeneousReduction_dB } from './standards/iso-12354-1-element.ts';

/** The contour falls short of itself by 2 dB in all 16 bands, 32 dB in sum, before it moves: ISO 717-1, clause 4.4. */
const CONTOUR_ABOVE_SPECTRUM_DB = 2;
const CONTOUR_500_DB = 52;

/**
 * Transmission loss of a wall beside the floor, one-third octave by one-third octave, dB.
 *
 * A homogeneous wall is computed (EN 12354-1:2000, Annex B). For a wall that is known by R_w alone the spectrum is assumed to
 * have the shape of the reference contour of ISO 717-1, so that its rating is that very R_w; the contour goes on at 3 dB
 * per band below 100 Hz and level above 3150 Hz.
 */
export function wallReduction_dB(wall: FlankingWall, bands_Hz: readonly number[]): number[] {
  const { reduction, surfaceMass_kg_m2, junctionLength_m, height_m } = wall;
  if (reduction.kind === 'homogeneous') {
    return homogeneousReduction_dB({ ...reduction, surfaceMass_kg_m2, length_m: junctionLength_m, height_m }, bands_Hz);
  }
  const shift_dB = reduction.Rw_dB - CONTOUR_500_DB - CONTOUR_ABOVE_SPECTRUM_DB;
  return bands_Hz.map((band_Hz) => contour_dB(band_Hz) + shift_dB);
}

function contour_dB(band_Hz: number): number {
  const [lowest_Hz, lowest_dB] = REFERENCE_THIRD[0]!;
  const below = THIRD_OCTAVES_HZ.indexOf(lowest_Hz) - THIRD_OCTAVES_HZ.indexOf(band_Hz);
  if (below > 0) return lowest_dB - 3 * below;
  return (REFERENCE_THIRD[-below] ?? REFERENCE_THIRD.at(-1)!)[1];
}
