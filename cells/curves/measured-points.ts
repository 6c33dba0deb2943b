/** Measured bands as points over the curves, and how far the prediction is from them. */
import type { Prediction } from '#src/acoustics/prediction.ts';
import { octavesFromThirds } from '#src/acoustics/ratings/octave-bands.ts';
import { bandWidthOf, valuesAt } from '#src/acoustics/ratings/spectrum.ts';
import { levelText, type PointsOverlay } from '#src/charts/band-data.ts';
import { measuredMark } from '#src/charts/measured-marks.ts';
import type { CurvesCell, MeasuredBands } from '#src/notebook/types.ts';
import { curveQuantityInfo } from './curve-quantities.ts';

/** Those of the cell that are of the quantity it shows, over the bands of its chart. */
export function measuredPoints({ measured = [], quantity }: CurvesCell, bands_Hz: readonly number[]): PointsOverlay[] {
  return measured.flatMap((m, i) =>
    m.quantity === quantity
      ? [
          {
            kind: 'points',
            label: measuredLabel(m),
            description: [...bandNotes(m, bands_Hz), m.source].join('; '),
            values_dB: valuesAt(m, bands_Hz),
            bandWidth: bandWidthOf(m.bands_Hz),
            mark: measuredMark(i),
          },
        ]
      : [],
  );
}

function measuredLabel({ name }: MeasuredBands): string {
  return name ? `${name}, measured` : 'measured';
}

function bandNotes({ bands_Hz: own_Hz, quantity }: MeasuredBands, bands_Hz: readonly number[]): string[] {
  const outside = own_Hz.filter((band) => !bands_Hz.includes(band));
  return [
    ...(bandWidthOf(own_Hz) === 'octave' ? [OCTAVES[quantity]] : []),
    ...(outside.length > 0 ? [`outside the picture: ${outside.join(', ')} Hz`] : []),
  ];
}

/** What points per octave mean beside curves per one-third octave: 10 lg 3 = 4.8 dB for levels. */
const OCTAVES = {
  airborne: 'octaves',
  impact: 'octaves, about 5 dB above one-third octaves of the same sound',
} as const;

export interface MeasuredFit {
  /** Where both have a value. */
  readonly bands_Hz: readonly number[];
  /** Predicted minus measured. */
  readonly mean_dB: number;
  readonly rms_dB: number;
}

/** Octaves are compared with octaves: those of the prediction are made from its one-third octaves. */
export function measuredFit(measured: MeasuredBands, prediction: Prediction): MeasuredFit {
  const thirds = {
    bands_Hz: prediction.bands_Hz,
    values_dB: curveQuantityInfo(measured.quantity).levels_dB(prediction),
  };
  const kind = measured.quantity === 'impact' ? 'level' : 'insulation';
  const predicted = bandWidthOf(measured.bands_Hz) === 'octave' ? octavesFromThirds(thirds, kind) : thirds;
  const errors = valuesAt(predicted, measured.bands_Hz).map((value, i) => value - measured.values_dB[i]!);
  const common = errors.filter(Number.isFinite);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    bands_Hz: measured.bands_Hz.filter((_, i) => Number.isFinite(errors[i])),
    mean_dB: mean(common),
    rms_dB: Math.sqrt(mean(common.map((error) => error ** 2))),
  };
}

/** A sentence for each of those that are shown; over differences, why none is. */
export function measuredRemarks({ measured = [], quantity }: CurvesCell, prediction: Prediction, scenario: string) {
  if (measured.length > 0 && curveQuantityInfo(quantity).relative) return [NOT_OVER_DIFFERENCES];
  return measured
    .filter((m) => m.quantity === quantity)
    .map(
      (m) => `Predicted minus measured, “${scenario}” against “${m.name}”: ${fitWords(measuredFit(m, prediction))}.`,
    );
}

const NOT_OVER_DIFFERENCES = 'Measured bands lie over the airborne and the impact curves, not over gains.';

function fitWords({ bands_Hz, mean_dB, rms_dB }: MeasuredFit): string {
  if (bands_Hz.length === 0) return 'no band in common';
  const range = bands_Hz.length > 1 ? ` bands, ${bands_Hz[0]} to ${bands_Hz.at(-1)} Hz` : ` band, ${bands_Hz[0]} Hz`;
  return `mean ${levelText(mean_dB, true)} dB, rms ${levelText(rms_dB)} dB over ${bands_Hz.length}${range}`;
}
