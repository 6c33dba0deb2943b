/** What someone typed for a quantity → the parameter's value, or one sentence on what is wrong. */
import type { UnitSystem } from '#src/notebook/types.ts';
import { asTyped } from '#src/quantities/as-typed.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { QuantityKind } from '#src/quantities/kinds.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

export type Entry = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

export interface QuantityLimits {
  readonly label: string;
  readonly quantity: QuantityKind;
  readonly min: number;
  readonly max: number;
  /** Whose limits these are, where they are narrower than what could be: "range of its parameter". */
  readonly limitsFrom?: string;
}

/**
 * Limits are shown rounded: 100 mm as 3 15/16 in, which reads as 100.01 mm. What lies beyond a limit by no more than that
 * rounding, so that both show the same text, is the limit.
 */
export function readEntry(limits: QuantityLimits, text: string, units: UnitSystem): Entry {
  const { label, quantity, min, max, limitsFrom } = limits;
  const parsed = parseQuantity(text, quantity, units);
  if (!parsed.ok) return parsed;
  const within = Math.min(Math.max(parsed.value, min), max);
  const shown = (value: number) => formatQuantity(value, quantity, units);
  if (within === parsed.value || shown(within) === shown(parsed.value)) return { ok: true, value: within };
  const from = limitsFrom === undefined ? '' : ` (${limitsFrom})`;
  return {
    ok: false,
    message: `${label} must be from ${shown(min)} to ${shown(max)}${from}, got ${asTyped(text, quantity, units)}.`,
  };
}

/**
 * Whether a text still is the one that was shown: then the value behind it, which may have more digits, stays, as long as
 * nobody typed it.
 */
export function isUntouched(text: string, shownText: string): boolean {
  return text.trim() === shownText.trim();
}
