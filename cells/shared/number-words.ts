/** Numbers and differences as people read them. */
import type { QuantityKind, UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity, NO_VALUE } from '#src/quantities/format-quantity.ts';

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

/** A difference with sign and unit: "+66.9 kg/m²"; "±0 mm" for what rounds to nothing. */
export function signedQuantity(difference: number, kind: QuantityKind, units: UnitSystem): string {
  const text = formatQuantity(difference, kind, units);
  if (Number.isNaN(difference)) return text;
  if (text === formatQuantity(0, kind, units)) return `±${text}`;
  return `${difference > 0 ? '+' : ''}${text}`;
}
