/** κ²/2π of a strip clamped at two lines, κ = 4.730. Blevins, Formulas for Natural Frequency and Mode Shape, 1979, table 8-1. */
const CLAMPED_STRIP = 4.73004 ** 2 / (2 * Math.PI);

/** First resonance of a board between two lines of fastening, (κ²/2πb²) √(B/m′), Hz. */
export function bayResonance_Hz(
  { staticBending_Nm, surfaceMass_kg_m2 }: { readonly staticBending_Nm: number; readonly surfaceMass_kg_m2: number },
  spacing_m: number,
): number {
  return (CLAMPED_STRIP / (spacing_m * spacing_m)) * Math.sqrt(staticBending_Nm / surfaceMass_kg_m2);
}
