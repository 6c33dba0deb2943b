import { type Iso226Edition, LOUDNESS_PARAMETERS, type LoudnessParameters } from '../standards/iso-226.ts';

/** Constants of formula (1), edition of 2003: 4.47·10⁻³, 1.15 and the reference 0.4·10^(x/10 − 9). */
const SLOPE_2003 = 4.47e-3;
const OFFSET_2003 = 1.15;
/** Of the inverse as printed, formula (2): rounded, so that there and back differs by up to 0.06 phon. */
const INVERSE_OFFSET_2003 = 0.005135;
/** Constants of formula (1), edition of 2023: (4·10⁻¹⁰)^(0.3 − α), exponent 0.03 per phon, threshold 10^0.072. */
const REFERENCE_2023 = 4e-10;
const EXPONENT_1000 = 0.3;
const OFFSET_2023 = 10 ** 0.072;

/**
 * Level of a pure tone as loud as `loudness_phon`, dB re 20 µPa, free field from the front.
 *
 * Source: ISO 226, formula (1). Normative from 20 phon to 90 phon (80 phon above 4 kHz); outside it extrapolates.
 * @returns NaN for a frequency that is not a nominal one-third octave 20–12500 Hz.
 */
export function equalLoudnessLevel_dB(loudness_phon: number, band_Hz: number, edition: Iso226Edition = '2023'): number {
  const p = parametersOf(band_Hz, edition);
  if (!p) return NaN;
  if (edition === '2003') {
    const A = SLOPE_2003 * (10 ** (0.025 * loudness_phon) - OFFSET_2003) + power2003(p.threshold_dB, p);
    return (10 / p.exponent) * Math.log10(A) - p.transfer_dB + 94;
  }
  const A = REFERENCE_2023 ** (EXPONENT_1000 - p.exponent) * (10 ** (0.03 * loudness_phon) - OFFSET_2023);
  return (10 / p.exponent) * Math.log10(A + power2023(p.threshold_dB, p)) - p.transfer_dB;
}

/**
 * Loudness level of a pure tone of this level, phon: the inverse of `equalLoudnessLevel_dB`. Far under the threshold of
 * hearing there is none: NaN.
 */
export function loudnessLevel_phon(level_dB: number, band_Hz: number, edition: Iso226Edition = '2023'): number {
  const p = parametersOf(band_Hz, edition);
  if (!p) return NaN;
  if (edition === '2003') {
    const B = power2003(level_dB, p) - power2003(p.threshold_dB, p) + INVERSE_OFFSET_2003;
    return 40 * Math.log10(B) + 94;
  }
  const excess = power2023(level_dB, p) - power2023(p.threshold_dB, p);
  return (100 / 3) * Math.log10(excess / REFERENCE_2023 ** (EXPONENT_1000 - p.exponent) + OFFSET_2023);
}

function parametersOf(band_Hz: number, edition: Iso226Edition): LoudnessParameters | undefined {
  return LOUDNESS_PARAMETERS[edition].find((p) => p.band_Hz === band_Hz);
}

function power2003(level_dB: number, { exponent, transfer_dB }: LoudnessParameters): number {
  return (0.4 * 10 ** ((level_dB + transfer_dB) / 10 - 9)) ** exponent;
}

function power2023(level_dB: number, { exponent, transfer_dB }: LoudnessParameters): number {
  return 10 ** ((exponent * (level_dB + transfer_dB)) / 10);
}
