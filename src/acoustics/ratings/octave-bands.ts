import { OCTAVES_HZ, thirdsOf } from '../standards/iec-61260.ts';
import { energyMean_dB, energySum_dB } from './energy.ts';
import { type Spectrum, valuesAt } from './spectrum.ts';

/**
 * Octave values from one-third octaves; NaN where one of the three is missing, no band where all are.
 *
 * `kind` 'insulation' (R, D, transmission loss): the transmitted energy is the mean of the three, since the three carry
 * equal incident energy (the convention of EN 12354-1:2000 and ISO 16283-1:2014, Annex B); 'level' (L_n, L): energies add.
 */
export function octavesFromThirds(spectrum: Spectrum, kind: 'insulation' | 'level'): Spectrum {
  const bands_Hz = OCTAVES_HZ.filter((f) => thirdsOf(f).some((third) => spectrum.bands_Hz.includes(third)));
  const values_dB = bands_Hz.map((f) => {
    const thirds = valuesAt(spectrum, thirdsOf(f));
    return kind === 'level' ? energySum_dB(thirds) : -energyMean_dB(thirds.map((v) => -v));
  });
  return { bands_Hz, values_dB };
}
