/** What someone typed for a quantity → the parameter's value, or one sentence on what is wrong. */
import type { QuantityParameter, UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

export type Entry = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

export type QuantityLimits = Pick<QuantityParameter, 'label' | 'quantity' | 'min' | 'max'>;

export function readEntry(limits: QuantityLimits, text: string, units: UnitSystem): Entry {
  const { label, quantity, min, max } = limits;
  const parsed = parseQuantity(text, quantity, units);
  if (!parsed.ok) return parsed;
  if (parsed.value >= min && parsed.value <= max) return parsed;
  const shown = (value: number) => formatQuantity(value, quantity, units);
  return {
    ok: false,
    message: `${label} must be from ${shown(min)} to ${shown(max)}, got ${shown(parsed.value)}.`,
  };
}
