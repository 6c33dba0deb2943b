import type { Construction } from '#src/acoustics/construction.ts';
import { absorptionArea_m2, levelBelow_dB } from '#src/acoustics/level-below.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { audibility, hearingThreshold_dB } from '#src/acoustics/ratings/audibility.ts';
import { loudnessLevel_phon } from '#src/acoustics/ratings/loudness-level.ts';
import { type RatingLine, ratingReport } from '#src/acoustics/ratings/rating-report.ts';
import { valuesAt } from '#src/acoustics/ratings/spectrum.ts';
import type { LevelSpectrum } from './read-levels.ts';
import type { RoomBelow } from './room-options.ts';

/** A source above, the room below, and what sounds there anyway. */
export interface Listening {
  readonly room: RoomBelow;
  readonly source: LevelSpectrum;
  readonly background?: LevelSpectrum | undefined;
}

/** 'heard' counts steady bands; music and blows are heard earlier (see `audibility`). */
export type Audible = 'heard' | 'under threshold' | 'under background';

/** What is heard below of a source above; arrays have one value per band, NaN (null in JSON) where there is none. */
export interface SoundBelow {
  /** Files that the levels come from. */
  readonly source: string;
  readonly background?: string;
  /** A = 0.16 V/T of the room below. */
  readonly absorptionArea_m2: number;
  /** L1 in the room above. */
  readonly above_dB: readonly number[];
  /** L2 = L1 − R + 10 lg(S/A). */
  readonly below_dB: readonly number[];
  /** Loudness level of a pure tone of the band's level, ISO 226:2023. */
  readonly loudness_phon: readonly number[];
  /** ISO 389-7:2019, diffuse field. */
  readonly threshold_dB: readonly number[];
  readonly background_dB?: readonly number[];
  /** Level over the higher of threshold and background. */
  readonly excess_dB: readonly number[];
  readonly audible: readonly (Audible | null)[];
  /** Of the level below: LA, NC, NR, RC …; `detail` says what a value that is missing would need. */
  readonly ratings: readonly RatingLine[];
  /** Why values of bands are missing. */
  readonly gaps: readonly Gap[];
  /** How the files were read. */
  readonly notices: readonly string[];
}

export interface Gap {
  readonly bands_Hz: readonly number[];
  readonly values: 'below_dB' | 'loudness_phon' | 'excess_dB';
  readonly reason: string;
}

export function soundBelow(
  { length_m, width_m }: Construction,
  { bands_Hz, R_dB }: Pick<Prediction, 'bands_Hz' | 'R_dB'>,
  { room, source, background }: Listening,
): SoundBelow {
  const rooms = { partitionArea_m2: length_m * width_m, ...room };
  const below_dB = levelBelow_dB(bands_Hz, R_dB, source, rooms);
  const background_dB = background && valuesAt(background, bands_Hz);
  const standing = audibility(bands_Hz, below_dB, background_dB);
  const loudness_phon = bands_Hz.map((band_Hz, i) => loudnessLevel_phon(below_dB[i]!, band_Hz));
  const without = (values: readonly number[], others: readonly number[] = []) =>
    bands_Hz.filter((_, i) => Number.isNaN(values[i]) && !Number.isNaN(others[i]));
  return {
    source: source.file,
    ...(background && { background: background.file }),
    absorptionArea_m2: absorptionArea_m2(rooms),
    above_dB: valuesAt(source, bands_Hz),
    below_dB,
    loudness_phon,
    threshold_dB: hearingThreshold_dB(bands_Hz),
    ...(background_dB && { background_dB }),
    excess_dB: standing.map(({ excess_dB }) => excess_dB),
    audible: standing.map(({ excess_dB, hiddenBy }) =>
      Number.isNaN(excess_dB) ? null : hiddenBy ? (`under ${hiddenBy}` as const) : 'heard',
    ),
    ratings: ratingReport('level', { bands_Hz, values_dB: below_dB }),
    gaps: [
      gap(without(below_dB), 'below_dB', `${source.file} has no level there`),
      gap(without(loudness_phon, below_dB), 'loudness_phon', 'so far under the threshold of hearing there is none'),
      gap(without(background_dB ?? [], below_dB), 'excess_dB', `${background?.file} has no level there`),
    ].filter((g) => g.bands_Hz.length > 0),
    notices: [source, background].flatMap((s) => (s ? [...s.notices, ...outside(s, bands_Hz)] : [])),
  };
}

function gap(bands_Hz: readonly number[], values: Gap['values'], reason: string): Gap {
  return { bands_Hz, values, reason };
}

/** Bands of the file that are not predicted are named rather than dropped in silence. */
function outside({ bands_Hz, values_dB, file }: LevelSpectrum, predicted_Hz: readonly number[]): readonly string[] {
  const left = bands_Hz.filter((f, i) => !predicted_Hz.includes(f) && !Number.isNaN(values_dB[i]));
  return left.length === 0 ? [] : [`${file}: nothing is predicted at ${left.join(', ')} Hz; these bands are left out`];
}
