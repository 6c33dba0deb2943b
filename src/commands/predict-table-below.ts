import type { SoundBelow } from './predict-below.ts';
import type { StackPrediction } from './predict-notebook.ts';
import { columns, rated, tenths } from './text-columns.ts';

/** Levels, loudness and audibility per band, then the ratings with how they came about. */
export function soundBelowTable({ bands_Hz, soundBelow }: StackPrediction): string | undefined {
  if (!soundBelow) return undefined;
  const { source, background, absorptionArea_m2, gaps } = soundBelow;
  const silence = background ? `background ${background}` : 'no background';
  const ratings = soundBelow.ratings.map((r) => [r.name, rated(r), r.standard, r.detail]);
  return [
    `in the room below, A ${tenths(absorptionArea_m2)} m², ${silence}; above ${source}`,
    levelTable(bands_Hz, soundBelow),
    ...gaps.map((g) => `No ${WORDS[g.values]} at ${g.bands_Hz.join(', ')} Hz: ${g.reason}.`),
    LOUDNESS,
    columns(ratings, 2),
  ].join('\n');
}

const WORDS = { below_dB: 'level below', loudness_phon: 'loudness level', excess_dB: 'audibility' } as const;

const LOUDNESS =
  'Loudness level: of a pure tone of that level (ISO 226). Heard: a steady band over threshold (ISO 389-7) and background;\n' +
  'music and blows are heard earlier.';

function levelTable(bands_Hz: readonly number[], sound: SoundBelow): string {
  const { background_dB } = sound;
  const head = [
    ...['Hz', 'L above', 'L below', 'phon', 'threshold'],
    ...(background_dB ? ['background'] : []),
    ...['over', 'heard'],
  ];
  const rows = bands_Hz.map((band_Hz, i) => [
    String(band_Hz),
    ...[sound.above_dB, sound.below_dB, sound.loudness_phon, sound.threshold_dB].map((values) => tenths(values[i])),
    ...(background_dB ? [tenths(background_dB[i])] : []),
    tenths(sound.excess_dB[i]),
    sound.audible[i] ?? '–',
  ]);
  return columns([head, ...rows], 1);
}
