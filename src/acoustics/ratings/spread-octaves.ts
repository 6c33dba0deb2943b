import { thirdsOf } from '../standards/iec-61260.ts';
import type { Spectrum } from './spectrum.ts';

/**
 * One-third octaves that together have each octave's level, its energy spread evenly over its three: 10 lg 3 = 4.77 dB less
 * each. How the level lies within the octave is not known; this assumes no tone in it.
 */
export function thirdsFromOctaves({ bands_Hz, values_dB }: Spectrum): Spectrum {
  const share_dB = 10 * Math.log10(3);
  return {
    bands_Hz: bands_Hz.flatMap((f) => thirdsOf(f)),
    values_dB: values_dB.flatMap((level_dB) => [level_dB, level_dB, level_dB].map((l) => l - share_dB)),
  };
}
