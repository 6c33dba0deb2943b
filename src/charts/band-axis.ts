/**
 * The one-third-octave axis: bands stand at equal distances, and any frequency has its place between them.
 *
 * Positions are 10 lg f, whose whole numbers are the exact base-10 mid-band frequencies (IEC 61260-1:2014, 5.2 to 5.4),
 * so that a resonance at 46 Hz falls where it belongs.
 */
export function bandPosition(frequency_Hz: number): number {
  return 10 * Math.log10(frequency_Hz);
}

/** Position of a nominal band: 63 Hz stands at 18 exactly, not at 17.99. */
export function nominalPosition(band_Hz: number): number {
  return Math.round(bandPosition(band_Hz));
}

/** From the lower edge of the first band to the upper edge of the last one, as positions. */
export function bandSpan(bands_Hz: readonly number[]): readonly [from: number, to: number] {
  return [nominalPosition(bands_Hz[0] ?? 1) - 0.5, nominalPosition(bands_Hz.at(-1) ?? 10 ** 0.1) + 0.5];
}

/** On which side of all bands a frequency lies; undefined where it is among them. */
export function besideBands(frequency_Hz: number, bands_Hz: readonly number[]): 'below' | 'above' | undefined {
  const [from, to] = bandSpan(bands_Hz);
  const position = bandPosition(frequency_Hz);
  return position < from ? 'below' : position > to ? 'above' : undefined;
}

/** "63", "31.5", and from 10 kHz up "10 000". */
export function bandLabel(band_Hz: number): string {
  return band_Hz >= 10_000
    ? `${Math.floor(band_Hz / 1000)} ${String(band_Hz % 1000).padStart(3, '0')}`
    : String(band_Hz);
}

/** Octaves stand at every third band: 31.5, 63, 125 Hz …, at positions that three divides. */
export function isOctavePosition(position: number): boolean {
  return position % 3 === 0;
}

/** Index of the middle band of the octave that a band lies in; −1 where the chart does not have it. */
export function octaveMiddleIndex(bands_Hz: readonly number[], index: number): number {
  const middle = 3 * Math.round(nominalPosition(bands_Hz[index]!) / 3);
  return bands_Hz.findIndex((band) => nominalPosition(band) === middle);
}

const WIDTH_OF_FULL_LABEL_px = 33;
const WIDTH_OF_OCTAVE_LABEL_px = 11;

/**
 * Which bands get a written label: all where there is room, else those at octave centres (16, 31.5, 63, 125 … 4000), and
 * where even those are tight every other octave.
 */
export function labelledBands(bands_Hz: readonly number[], pixelsPerBand: number): readonly number[] {
  if (pixelsPerBand >= WIDTH_OF_FULL_LABEL_px) return bands_Hz;
  const step = pixelsPerBand >= WIDTH_OF_OCTAVE_LABEL_px ? 3 : 6;
  return bands_Hz.filter((band) => nominalPosition(band) % step === 0);
}
