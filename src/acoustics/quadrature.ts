import type { FloorModel } from './floor-model.ts';

/** How finely the engine integrates. */
export interface Quadrature {
  /** Points in a band, or a piece of one, across which all is smooth. */
  readonly frequencies: number;
  /** Points per piece beside a peak, and where the tapping machine's force beats. */
  readonly peakFrequencies: number;
  /** Points per piece between breakpoints: of waves faster than sound, of slower ones, and of a leaf's resonance. */
  readonly angles: number;
  readonly slowWaves: number;
  readonly resonance: number;
  /** Greatest error of a piece against the whole sum over waves; a piece that seems to have more is refined. */
  readonly tolerance: number;
  /** The same over the frequencies of a band; these errors are judged by few points, and more strictly than need be. */
  readonly bandTolerance: number;
  /** How often a piece of waves is halved, and a piece of a band. */
  readonly mostHalvings: number;
  readonly mostBandHalvings: number;
}

/** Within 0.1 dB of a dense reference; `tests/property/engine-quadrature.test.ts` says how often and how far off else. */
export const QUADRATURE: Quadrature = {
  frequencies: 4,
  peakFrequencies: 6,
  angles: 6,
  slowWaves: 4,
  resonance: 4,
  tolerance: 0.002,
  bandTolerance: 0.005,
  mostHalvings: 12,
  mostBandHalvings: 4,
};

/** The same for what loses less than any material in the list. */
export const SHARP_QUADRATURE: Quadrature = {
  ...QUADRATURE,
  frequencies: 6,
  peakFrequencies: 8,
  angles: 8,
  slowWaves: 6,
  resonance: 6,
  tolerance: 0.0002,
};

/** For thousands of variations: about half the time, 99 of 100 floors of two leaves within a quarter of a decibel. */
export const QUICK_QUADRATURE: Quadrature = {
  frequencies: 2,
  peakFrequencies: 3,
  angles: 3,
  slowWaves: 3,
  resonance: 2,
  tolerance: 0.1,
  bandTolerance: 0.9,
  mostHalvings: 8,
  mostBandHalvings: 0,
};

/** Sheets and mats of less loss may ring so sharply that few points miss it. */
const SHARP_LOSS = 0.005;

/** The quadrature that brings a floor within 0.1 dB. */
export function quadratureFor({ plates, interlayers }: FloorModel): Quadrature {
  const sharp =
    plates.some(({ sheets }) => sheets.some(({ lossFactor }) => lossFactor < SHARP_LOSS)) ||
    interlayers.some((layer) => layer.kind === 'mat' && layer.mat.lossFactor < SHARP_LOSS);
  return sharp ? SHARP_QUADRATURE : QUADRATURE;
}
