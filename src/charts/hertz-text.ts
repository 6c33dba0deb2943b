/** A resonance or critical frequency for people: no finer than a model knows it. "9.4 Hz", "46 Hz", "2510 Hz". */
export function hertzText(frequency_Hz: number): string {
  if (!Number.isFinite(frequency_Hz)) return '–';
  if (frequency_Hz < 20) return `${frequency_Hz.toFixed(1)} Hz`;
  return `${frequency_Hz < 1000 ? Math.round(frequency_Hz) : Number(frequency_Hz.toPrecision(3))} Hz`;
}
