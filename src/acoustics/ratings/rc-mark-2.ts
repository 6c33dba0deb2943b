import {
  QAI_MARGINAL_MAX_DB,
  QAI_NEUTRAL_MAX_DB,
  RC_CURVE,
  RC_REGIONS_HZ,
  type RcRegion,
  VIBRATION_A_DB,
  VIBRATION_B_DB,
} from '../standards/room-criteria-2.ts';
import { bandsOf } from '../standards/table.ts';
import { energyMean_dB } from './energy.ts';
import { roundHalfUp } from './rounding.ts';
import { missingBands, type Spectrum, valuesAt } from './spectrum.ts';

export interface RcMark2 {
  /** Mean of 500, 1000 and 2000 Hz, integer, dB; NaN where one is missing. */
  readonly RC: number;
  /** Energy mean of the deviation from the RC curve in each region, dB. */
  readonly deviation_dB: Readonly<Record<RcRegion, number>>;
  /** Quality assessment index: spread of the three, dB. */
  readonly QAI_dB: number;
  /** N neutral; else the region that stands out: LF rumble, MF roar, HF hiss. Absent where a band is missing. */
  readonly tag?: 'N' | RcRegion;
  readonly quality?: 'neutral' | 'marginal' | 'objectionable';
  /** Levels from which light structures may be felt to vibrate: A clearly, B moderately. */
  readonly vibration?: 'A' | 'B';
  readonly missing_Hz: readonly number[];
}

/**
 * Room criterion, mark II, of octave-band levels 16–4000 Hz.
 *
 * Source: Blazier, Noise Control Eng. J. 45(6), 1997; ASHRAE handbook.
 * @param levels Octaves, dB re 20 µPa. Without 16–4000 Hz complete, only the level RC can be given.
 */
export function rcMark2(levels: Spectrum): RcMark2 {
  const bands_Hz = bandsOf(RC_CURVE);
  const given = valuesAt(levels, bands_Hz);
  const missing_Hz = missingBands(bands_Hz, given);
  const [mid500, mid1000, mid2000] = valuesAt(levels, [500, 1000, 2000]) as [number, number, number];
  const RC = roundHalfUp((mid500 + mid1000 + mid2000) / 3);

  const region = (name: RcRegion) => energyMean_dB(RC_REGIONS_HZ[name].map((f) => deviation(bands_Hz.indexOf(f))));
  const deviation = (i: number) => given[i]! - (RC + RC_CURVE[i]![1]);
  const deviation_dB = { LF: region('LF'), MF: region('MF'), HF: region('HF') };
  const ranked = (Object.keys(deviation_dB) as RcRegion[]).sort((a, b) => deviation_dB[b] - deviation_dB[a]);
  const QAI_dB = deviation_dB[ranked[0]!] - deviation_dB[ranked[2]!];
  if (missing_Hz.length > 0) return { RC, deviation_dB, QAI_dB: NaN, missing_Hz };

  const vibration = exceeds(levels, VIBRATION_A_DB) ? 'A' : exceeds(levels, VIBRATION_B_DB) ? 'B' : undefined;
  return {
    RC,
    deviation_dB,
    QAI_dB,
    tag: QAI_dB <= QAI_NEUTRAL_MAX_DB ? 'N' : ranked[0]!,
    quality: QAI_dB <= QAI_NEUTRAL_MAX_DB ? 'neutral' : QAI_dB <= QAI_MARGINAL_MAX_DB ? 'marginal' : 'objectionable',
    ...(vibration && { vibration }),
    missing_Hz,
  };
}

function exceeds(levels: Spectrum, limit: typeof VIBRATION_A_DB): boolean {
  const given = valuesAt(levels, bandsOf(limit));
  return limit.some(([, limit_dB], i) => given[i]! > limit_dB);
}
