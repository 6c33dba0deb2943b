/**
 * IEC 61260-1:2014, octave and one-third-octave bands, base ten: clauses 5.2–5.6 and Annex E. Partly seen in a published
 * copy, the rest calculated from the formulas.
 */

/** Nominal mid-band frequencies of one-third octaves, Hz. */
// biome-ignore format: table
export const THIRD_OCTAVES_HZ: readonly number[] = [
  10, 12.5, 16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800,
  1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000, 10000, 12500, 16000, 20000,
];

/** Nominal mid-band frequencies of octaves, Hz: every third of the above. */
export const OCTAVES_HZ: readonly number[] = [16, 31.5, 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000];

export interface ExactBand {
  readonly lower_Hz: number;
  readonly middle_Hz: number;
  readonly upper_Hz: number;
}

/**
 * Exact middle 1000 · 10^(k/10) and edges of a band given by its nominal frequency.
 *
 * @throws RangeError if the frequency is not a nominal one of that width.
 */
export function exactBandOf(nominal_Hz: number, width: 'third' | 'octave' = 'third'): ExactBand {
  const list = width === 'third' ? THIRD_OCTAVES_HZ : OCTAVES_HZ;
  if (!list.includes(nominal_Hz)) {
    throw new RangeError(`nominal_Hz must be a mid-band frequency of IEC 61260-1 (${width}), got ${nominal_Hz}`);
  }
  const k = THIRD_OCTAVES_HZ.indexOf(nominal_Hz) - THIRD_OCTAVES_HZ.indexOf(1000);
  const half = width === 'third' ? 0.5 : 1.5;
  return {
    lower_Hz: 1000 * 10 ** ((k - half) / 10),
    middle_Hz: 1000 * 10 ** (k / 10),
    upper_Hz: 1000 * 10 ** ((k + half) / 10),
  };
}

/** The three one-third octaves in an octave band. @throws RangeError if it is not a nominal octave. */
export function thirdsOf(octave_Hz: number): readonly [number, number, number] {
  const middle = OCTAVES_HZ.includes(octave_Hz) ? THIRD_OCTAVES_HZ.indexOf(octave_Hz) : -1;
  if (middle < 0) throw new RangeError(`octave_Hz must be a nominal octave of IEC 61260-1, got ${octave_Hz}`);
  return [THIRD_OCTAVES_HZ[middle - 1]!, octave_Hz, THIRD_OCTAVES_HZ[middle + 1]!];
}
