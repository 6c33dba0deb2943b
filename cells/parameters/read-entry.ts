/** What someone typed for a quantity → the parameter's value, or one sentence on what is wrong. */
import type { UnitSystem } from '#src/notebook/types.ts';
import { asTyped } from '#src/quantities/as-typed.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { QuantityKind } from '#src/quantities/kinds.ts';
import { limitText } from '#src/quantities/limit-text.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

export type Entry = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

export interface QuantityLimits {
  readonly label: string;
  readonly quantity: QuantityKind;
  readonly min: number;
  readonly max: number;
  /** Why there is no more, in plain words. */
  readonly whyNotMore?: string | undefined;
  /** Whose limits these are, where they are narrower than what could be: "range of its parameter". */
  readonly limitsFrom?: string;
}

/**
 * Limits are shown rounded: 100 mm as 3 15/16 in, which reads as 100.01 mm. What lies beyond a limit by no more than that
 * rounding is the limit: both show the same text, or it lies no farther beyond than the limit's text reads. A refusal names the
 * limit that was passed.
 */
export function readEntry(limits: QuantityLimits, text: string, units: UnitSystem): Entry {
  const { label, quantity, min, max } = limits;
  const parsed = parseQuantity(text, quantity, units);
  if (!parsed.ok) return parsed;
  const within = Math.min(Math.max(parsed.value, min), max);
  const isLimitAs = (shown: typeof limitText): boolean => {
    const text = shown(within, quantity, units);
    if (text === shown(parsed.value, quantity, units)) return true;
    const read = parseQuantity(text, quantity, units);
    return read.ok && Math.abs(parsed.value - within) <= Math.abs(read.value - within);
  };
  if (within === parsed.value || isLimitAs(formatQuantity) || isLimitAs(limitText)) return { ok: true, value: within };
  const least = within > parsed.value ? 'least' : 'most';
  const limit = `at ${least} ${limitText(within, quantity, units)}${reason(limits, least)}`;
  return { ok: false, message: `${label} must be ${limit}, got ${asTyped(text, quantity, units)}.` };
}

function reason({ limitsFrom, whyNotMore }: QuantityLimits, least: 'least' | 'most'): string {
  const reasons = [limitsFrom, least === 'most' ? whyNotMore : undefined].filter((words) => words !== undefined);
  return reasons.length === 0 ? '' : ` (${reasons.join('; ')})`;
}

/**
 * Whether a text still is the one that was shown: then the value behind it, which may have more digits, stays, as long as
 * nobody typed it.
 */
export function isUntouched(text: string, shownText: string): boolean {
  return text.trim() === shownText.trim();
}
