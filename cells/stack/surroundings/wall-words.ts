import { rw } from '#src/acoustics/ratings/rw.ts';
import { THIRD_OCTAVES_HZ } from '#src/acoustics/standards/iec-61260.ts';
import { wallReduction_dB } from '#src/acoustics/wall-reduction.ts';
import { resolveWall } from '#src/notebook/resolve-flanking.ts';
import type { FlankingWall, UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

/** Mass and rating of a wall as it is. */
export function massAndRating(wall: FlankingWall): { readonly surfaceMass_kg_m2: number; readonly Rw_dB: number } {
  const resolved = resolveWall(wall);
  const bands_Hz = THIRD_OCTAVES_HZ.filter((f) => f >= 100 && f <= 3150);
  const { Rw } = rw({ bands_Hz, values_dB: wallReduction_dB(resolved, bands_Hz) });
  return { surfaceMass_kg_m2: resolved.surfaceMass_kg_m2, Rw_dB: Rw };
}

/** What follows from a wall's numbers: "420 kg/m², Rw 56 dB". */
export function wallInWords(wall: FlankingWall, units: UnitSystem): string {
  const { surfaceMass_kg_m2, Rw_dB } = massAndRating(wall);
  return `${formatQuantity(surfaceMass_kg_m2, 'surface-mass', units)}, Rw ${Rw_dB} dB`;
}
