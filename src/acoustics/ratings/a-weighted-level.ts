import { exactBandOf } from '../standards/iec-61260.ts';
import { aWeighting_dB } from '../standards/iec-61672.ts';
import { energySum_dB } from './energy.ts';
import { bandWidthOf, type Spectrum } from './spectrum.ts';

/** A-weighted levels of bands at their exact mid-band frequencies, dB. NaN stays NaN. */
export function aWeightedBands_dB({ bands_Hz, values_dB }: Spectrum): number[] {
  const width = bandWidthOf(bands_Hz);
  return bands_Hz.map((f, i) => values_dB[i]! + aWeighting_dB(exactBandOf(f, width).middle_Hz));
}

/** A-weighted total of the bands that have a value, dB(A); NaN where none has. */
export function aWeightedLevel_dB(spectrum: Spectrum): number {
  const weighted = aWeightedBands_dB(spectrum).filter((level) => !Number.isNaN(level));
  return weighted.length > 0 ? energySum_dB(weighted) : NaN;
}
