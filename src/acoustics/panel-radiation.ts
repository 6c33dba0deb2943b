import { ForcedRadiation } from './forced-radiation.ts';
import { MAXIMUM_RADIATION, type PlateEdges, resonantRadiation } from './resonant-radiation.ts';

/** Used by one plate after another. */
const forced = new ForcedRadiation();

/**
 * Radiation efficiency of the reverberant field of a plate with critical frequency `fc_Hz`, by EN 12354-1:2000, Annex B, and
 * never more than the plate would radiate forced along as its free waves run, or at grazing incidence where they are slower than
 * sound. Where it is hardly larger than a wave of sound, as slabs are at their critical frequency, that is about 1, as Maidanik,
 * JASA 34, 1962, has it there (0.45 √(U fc/c), from memory), and not the annex's limit of 2.
 */
export function panelRadiation(f_Hz: number, fc_Hz: number, plate: PlateEdges, soundSpeed_m_s: number): number {
  const most = mostRadiation(f_Hz, fc_Hz, plate, soundSpeed_m_s);
  return Math.min(resonantRadiation(f_Hz, fc_Hz, plate, soundSpeed_m_s), most);
}

/** The most that can be. */
export function mostRadiation(
  f_Hz: number,
  fc_Hz: number,
  { area_m2, perimeter_m }: PlateEdges,
  soundSpeed_m_s: number,
): number {
  const cosine = f_Hz > fc_Hz ? Math.sqrt(1 - fc_Hz / f_Hz) : 0;
  const along = forced.prepare((2 * Math.PI * f_Hz) / soundSpeed_m_s, area_m2, perimeter_m).at(cosine);
  return Math.min(along, MAXIMUM_RADIATION);
}
