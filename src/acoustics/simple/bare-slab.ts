/** Rules for bare homogeneous slabs, by their mass alone. */

/** L_n,eq,w = 164 − 35 lg m', dB, for 100–600 kg/m². Source: EN 12354-2:2000, clause 4.3. NaN outside. */
export function bareSlabLnw(surfaceMass_kg_m2: number): number {
  return surfaceMass_kg_m2 >= 100 && surfaceMass_kg_m2 <= 600 ? 164 - 35 * Math.log10(surfaceMass_kg_m2) : NaN;
}

/** R_w = 37.5 lg m' − 42, dB, from 150 kg/m². Source: EN 12354-1:2000, Annex B (from memory). NaN below. */
export function bareSlabRw(surfaceMass_kg_m2: number): number {
  return surfaceMass_kg_m2 >= 150 ? 37.5 * Math.log10(surfaceMass_kg_m2) - 42 : NaN;
}

/**
 * R + L_n of a bare slab, dB: 38 + 30 lg f in one-third octaves, 43 + 30 lg f in octaves, less 10 lg σ.
 *
 * Source: Heckl & Rathe, JASA 35, 1963. Valid above the critical frequency; σ = 1/√(1 − fc/f), NaN up to fc.
 */
export function reductionPlusImpact_dB(
  frequency_Hz: number,
  criticalFrequency_Hz: number,
  bandWidth: 'third' | 'octave' = 'third',
): number {
  if (!(frequency_Hz > criticalFrequency_Hz)) return NaN;
  const sigma = 1 / Math.sqrt(1 - criticalFrequency_Hz / frequency_Hz);
  return (bandWidth === 'third' ? 38 : 43) + 30 * Math.log10(frequency_Hz) - 10 * Math.log10(sigma);
}
