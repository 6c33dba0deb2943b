import type { Spectrum } from '#src/acoustics/ratings/spectrum.ts';

/** Nominal band → value, as in the published cases. */
export function asSpectrum(byBand: Readonly<Record<string, number>>): Spectrum {
  const rows = Object.entries(byBand).map(([band, value]) => [Number(band), value] as const);
  return { bands_Hz: rows.map(([f]) => f), values_dB: rows.map(([, v]) => v) };
}
