import type { FlankingWall } from './construction.ts';
import { REFERENCE_THIRD, SUM_MAX_THIRD_DB } from './standards/iso-717-1.ts';
import { type HomogeneousElement, homogeneousReduction_dB } from './standards/iso-12354-1-element.ts';
import { HOMOGENEOUS_MATERIALS } from './standards/iso-12354-1-materials.ts';
import { bandsOf, valuesOf } from './standards/table.ts';

/**
 * Transmission loss of a wall beside the floor, one-third octave by one-third octave, dB.
 *
 * A homogeneous wall is computed (EN 12354-1:2000, Annex B). A wall that is known by mass and R_w alone is assumed to have the
 * shape of a homogeneous one of that mass, raised or lowered in all bands alike until its rating is R_w. (The reference
 * contour as shape would fall by 9 dB per octave below 100 Hz and stand still from 1250 Hz on, which no wall of one leaf
 * does: impact sound by such walls came out 6 dB too loud.)
 */
export function wallReduction_dB(wall: FlankingWall, bands_Hz: readonly number[]): number[] {
  const { reduction, surfaceMass_kg_m2, junctionLength_m, height_m } = wall;
  const size = { surfaceMass_kg_m2, length_m: junctionLength_m, height_m };
  if (reduction.kind === 'homogeneous') return homogeneousReduction_dB({ ...reduction, ...size }, bands_Hz);
  const masonry = { ...MASONRY, ...size, thickness_m: surfaceMass_kg_m2 / MASONRY.density_kg_m3 };
  const raised_dB = reduction.Rw_dB - unroundedRw_dB(masonry);
  return homogeneousReduction_dB(masonry, bands_Hz).map((R_dB) => R_dB + raised_dB);
}

/**
 * What a wall without more to tell is made of. Of the standard's materials concrete, calcium silicate and lightweight
 * concrete have coincidence at 43 to 50 kHz kg/m² over their mass; taken is the middle one.
 */
const MASONRY = HOMOGENEOUS_MATERIALS['calcium-silicate blocks'];

const CONTOUR_HZ = bandsOf(REFERENCE_THIRD);
const CONTOUR_DB = valuesOf(REFERENCE_THIRD);
const CONTOUR_500_DB = CONTOUR_DB[CONTOUR_HZ.indexOf(500)]!;

/** A rating rounds 16 bands to a tenth each, and must not fall by that. */
const ROUNDING_DB = 16 * 0.05;

/** R_w as if the contour of ISO 717-1 could be moved by any fraction of a decibel. */
function unroundedRw_dB(element: HomogeneousElement): number {
  const R_dB = homogeneousReduction_dB(element, CONTOUR_HZ);
  const short = CONTOUR_DB.map((contour_dB, i) => contour_dB - R_dB[i]!).toSorted((a, b) => b - a);
  // Moved down by x the contour is above the n bands that are short of it most, by their sum less n x.
  let sum = 0;
  let down = Infinity;
  for (const [i, most] of short.entries()) {
    if (i > 0 && most <= down) break;
    sum += most;
    down = (sum - (SUM_MAX_THIRD_DB - ROUNDING_DB)) / (i + 1);
  }
  return CONTOUR_500_DB - down;
}
