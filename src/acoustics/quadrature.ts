import type { FloorModel, InterlayerModel } from './floor-model.ts';
import type { PlateSheet } from './leaf-plate.ts';

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
  slowWaves: 5,
  resonance: 4,
  tolerance: 0.002,
  bandTolerance: 0.005,
  mostHalvings: 12,
  mostBandHalvings: 4,
};

/** The same for what rings sharply, and for what nobody builds, where peaks lie in places nobody foresaw. */
export const SHARP_QUADRATURE: Quadrature = {
  ...QUADRATURE,
  frequencies: 12,
  peakFrequencies: 10,
  angles: 10,
  slowWaves: 8,
  resonance: 8,
  tolerance: 0.0002,
  bandTolerance: 0.001,
};

/** For thousands of variations: less than half the time, 97 of 100 floors with a cavity within a quarter of a decibel. */
export const QUICK_QUADRATURE: Quadrature = {
  frequencies: 2,
  peakFrequencies: 3,
  angles: 3,
  slowWaves: 4,
  resonance: 3,
  tolerance: 0.1,
  bandTolerance: 0.9,
  mostHalvings: 8,
  mostBandHalvings: 0,
};

type Range = readonly [least: number, most: number];

/** What floors are built of, generously; sheets and mats of less loss ring so sharply that few points miss it. Our own. */
const BUILT: Readonly<
  Record<'thickness_m' | 'density_kg_m3' | 'loss' | 'stiffness_N_m3' | 'depth_m' | 'spacing_m', Range>
> = {
  thickness_m: [0.001, 0.5],
  density_kg_m3: [50, 8000],
  loss: [0.005, 0.6],
  stiffness_N_m3: [1e6, 1e9],
  depth_m: [0.004, 1],
  spacing_m: [0.1, 3],
};

/** The quadrature that brings a floor within 0.1 dB. */
export function quadratureFor(model: FloorModel): Quadrature {
  const usual = model.plates.every(({ sheets }) => sheets.every(isBuilt)) && model.interlayers.every(isUsual);
  return usual ? QUADRATURE : SHARP_QUADRATURE;
}

function isBuilt({ thickness_m, surfaceMass_kg_m2, lossFactor }: PlateSheet): boolean {
  return (
    within(BUILT.thickness_m, thickness_m) &&
    within(BUILT.density_kg_m3, surfaceMass_kg_m2 / thickness_m) &&
    within(BUILT.loss, lossFactor)
  );
}

function isUsual(layer: InterlayerModel): boolean {
  if (layer.kind === 'mat') {
    const { dynamicStiffness_N_m3, lossFactor } = layer.mat;
    return within(BUILT.stiffness_N_m3, dynamicStiffness_N_m3) && within(BUILT.loss, lossFactor);
  }
  const { joists, joistSpacing_m } = layer.cavity;
  return within(BUILT.depth_m, layer.depth_m) && (joists === 'none' || within(BUILT.spacing_m, joistSpacing_m));
}

function within([least, most]: Range, value: number): boolean {
  return value >= least && value <= most;
}
