/** Numbers and differences as people read them. */
import type { QuantityKind, UnitSystem } from '#src/notebook/types.ts';
import { displayValue, formatQuantity, formatValue, NO_VALUE, unitOf } from '#src/quantities/format-quantity.ts';

/** With a true minus; NaN is a dash. */
export function wholeNumber(value: number): string {
  return Number.isNaN(value) ? NO_VALUE : String(Math.round(value) + 0).replace('-', '−');
}

/** With its sign: "+5", "−3", "±0". */
export function signed(value: number): string {
  if (Number.isNaN(value)) return NO_VALUE;
  const rounded = Math.round(value);
  return rounded === 0 ? '±0' : `${rounded > 0 ? '+' : ''}${wholeNumber(rounded)}`;
}

/**
 * A mass per area with one decimal, so that masses and what they differ by can be read under each other; what would be 0 by
 * it and is not, and what is large, with digits of its own.
 */
export function massText(value_kg_m2: number, units: UnitSystem): string {
  return Number.isNaN(value_kg_m2) ? NO_VALUE : `${massNumber(value_kg_m2, units)} ${unitOf('surface-mass', units)}`;
}

/** The number alone, where the unit stands elsewhere. */
export function massNumber(value_kg_m2: number, units: UnitSystem): string {
  const shown = displayValue(value_kg_m2, 'surface-mass', units);
  const isPlain = value_kg_m2 === 0 || (Math.abs(shown) >= 0.05 && Math.abs(shown) < 1e6);
  return isPlain ? shown.toFixed(1).replace('-', '−') : formatValue(value_kg_m2, 'surface-mass', units);
}

/** A difference of masses per area, with sign. */
export function signedMass(difference_kg_m2: number, units: UnitSystem): string {
  // Masses that differ by rounding only differ by nothing.
  if (Math.abs(difference_kg_m2) < 1e-6) return `±${massText(0, units)}`;
  return `${difference_kg_m2 > 0 ? '+' : ''}${massText(difference_kg_m2, units)}`;
}

/** A difference with sign and unit: "+66.9 kg/m²"; "±0 mm" for what rounds to nothing. */
export function signedQuantity(difference: number, kind: QuantityKind, units: UnitSystem): string {
  const text = formatQuantity(difference, kind, units);
  if (Number.isNaN(difference)) return text;
  if (text === formatQuantity(0, kind, units)) return `±${text}`;
  return `${difference > 0 ? '+' : ''}${text}`;
}
