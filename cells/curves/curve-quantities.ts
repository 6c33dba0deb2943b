/** What a curves cell can show, and how it is read from predictions. */
import type { PathLevels, Prediction } from '#src/acoustics/prediction.ts';
import type { CurveQuantity } from '#src/notebook/types.ts';

export interface CurveQuantityInfo {
  readonly quantity: CurveQuantity;
  /** On the control. */
  readonly label: string;
  /** Of the value axis. */
  readonly valueLabel: string;
  /** The same where sound that goes around by the walls is in the values. */
  readonly apparentLabel: string;
  /** Values are taken from the reference scenario's; positive is better. */
  readonly relative: boolean;
  /** Less than this nobody hears or measures in a building: common practice, no source. Absent: all values count. */
  readonly faintest_dB?: number;
  levels_dB(prediction: Prediction): readonly number[];
  paths_dB(prediction: Prediction): PathLevels;
  /** Gain over the reference in one band; absent where nothing is compared. */
  gain_dB?(value_dB: number, reference_dB: number): number;
}

export const CURVE_QUANTITIES: readonly CurveQuantityInfo[] = [
  {
    quantity: 'airborne',
    label: 'Airborne',
    valueLabel: 'transmission loss R, dB',
    apparentLabel: 'apparent transmission loss R′, dB',
    relative: false,
    levels_dB: (p) => p.R_dB,
    paths_dB: (p) => p.paths_dB,
  },
  {
    quantity: 'impact',
    label: 'Impact',
    valueLabel: 'normalised impact sound level Ln, dB',
    apparentLabel: 'normalised impact sound level L′n, dB',
    relative: false,
    faintest_dB: 0,
    levels_dB: (p) => p.Ln_dB,
    paths_dB: (p) => p.impactPaths_dB,
  },
  {
    quantity: 'difference',
    label: 'Airborne gain',
    valueLabel: 'gain in transmission loss, dB',
    apparentLabel: 'gain in apparent transmission loss, dB',
    relative: true,
    levels_dB: (p) => p.R_dB,
    paths_dB: (p) => p.paths_dB,
    gain_dB: (value, reference) => value - reference,
  },
  {
    quantity: 'impact-difference',
    label: 'Impact gain',
    valueLabel: 'drop in impact sound level, dB',
    apparentLabel: 'drop in impact sound level, dB',
    relative: true,
    levels_dB: (p) => p.Ln_dB,
    paths_dB: (p) => p.impactPaths_dB,
    gain_dB: (value, reference) => reference - value,
  },
];

export function curveQuantityInfo(quantity: CurveQuantity): CurveQuantityInfo {
  return CURVE_QUANTITIES.find((q) => q.quantity === quantity)!;
}
