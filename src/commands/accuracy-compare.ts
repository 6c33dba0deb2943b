import type { ModelConstants } from '#src/acoustics/model-constants.ts';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { MEASURED_RATINGS, type MeasuredRatings } from '../../tests/published/measured-ratings.ts';
import { MEASURED_SPECTRA, type MeasuredSpectrum } from '../../tests/published/measured-spectra.ts';
import { REFERENCE_CONSTRUCTIONS, type ReferenceId } from '../../tests/published/reference-constructions.ts';

export const OCTAVES_Hz = [125, 250, 500, 1000, 2000, 4000] as const;

export const RATING_KEYS = ['STC', 'IIC', 'Rw', 'Lnw'] as const;
export type RatingKey = (typeof RATING_KEYS)[number];

/** One reference construction: what was measured, what is predicted. */
export interface Comparison {
  readonly id: ReferenceId;
  readonly description: string;
  readonly measured: { readonly TL_dB?: readonly number[] } & Partial<Record<RatingKey, number>>;
  readonly predicted: { readonly TL_dB: readonly number[] } & Record<RatingKey, number>;
}

export function measuredOf(id: ReferenceId): Comparison['measured'] & { description: string } {
  const rows: Record<string, MeasuredSpectrum | MeasuredRatings> = { ...MEASURED_SPECTRA, ...MEASURED_RATINGS };
  return rows[id]!;
}

export function compare(id: ReferenceId, constants: ModelConstants): Comparison {
  const { description, ...measured } = measuredOf(id);
  const prediction = predict(REFERENCE_CONSTRUCTIONS[id], { constants });
  const { STC, IIC, Rw, Lnw } = prediction.ratings;
  return { id, description, measured, predicted: { TL_dB: octaves_dB(prediction), STC, IIC, Rw, Lnw } };
}

/** Energy means of the thirds in each octave; the first one from 125 and 160 Hz, where those tests began. */
export function octaves_dB({ bands_Hz, R_dB }: Prediction): number[] {
  return OCTAVES_Hz.map((octave_Hz) => {
    const middle = bands_Hz.indexOf(octave_Hz);
    const thirds = R_dB.slice(octave_Hz === 125 ? middle : middle - 1, middle + 2);
    return -10 * Math.log10(thirds.reduce((sum, R) => sum + 10 ** (-R / 10), 0) / thirds.length);
  });
}

/** Predicted minus measured, octave by octave. */
export function octaveErrors_dB({ measured, predicted }: Comparison): number[] {
  return measured.TL_dB ? predicted.TL_dB.map((TL, i) => TL - measured.TL_dB![i]!) : [];
}

/** Predicted minus measured, undefined where one of them has no value. */
export function ratingError({ measured, predicted }: Comparison, key: RatingKey): number | undefined {
  const value = measured[key];
  return value === undefined || Number.isNaN(predicted[key]) ? undefined : predicted[key] - value;
}
