import type { PredictOptions } from '#src/acoustics/prediction.ts';

type LowestBand_Hz = NonNullable<PredictOptions['lowestBand_Hz']>;

const LOWEST_BANDS_Hz: readonly LowestBand_Hz[] = [20, 25, 31.5, 40, 50];

/** The lowest band as `--from` gives it, 50 Hz without; or one sentence on what is wrong. */
export function lowestBand_Hz(from: string | undefined): LowestBand_Hz | string {
  if (from === undefined) return 50;
  const band = LOWEST_BANDS_Hz.find((b) => b === Number(from.replace(/\s*Hz$/i, '')));
  return band ?? `--from must be one of ${LOWEST_BANDS_Hz.join(', ')} Hz, got ${from}.`;
}
