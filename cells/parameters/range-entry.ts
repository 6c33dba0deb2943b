/** What someone typed for the range or step of a parameter → its value, or one sentence on what is wrong. */
import { fieldsUsing } from '#src/notebook/field-use.ts';
import type { Notebook, QuantityParameter } from '#src/notebook/types.ts';
import { asTyped } from '#src/quantities/as-typed.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { limitText } from '#src/quantities/limit-text.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';
import type { Entry } from './read-entry.ts';

export type Limit = 'min' | 'max' | 'step';

/** A value that the range must reach, and whose it is. */
interface Bound {
  readonly value: number;
  readonly why: string;
}

/**
 * A range must hold the values of all scenarios and keep within what the fields accept that refer to the parameter. What
 * was typed as such a bound is shown is that bound: 100 mm are shown as 3 15/16 in, which are more.
 */
export function rangeEntry(notebook: Notebook, parameter: QuantityParameter, limit: Limit, text: string): Entry {
  const { label, quantity } = parameter;
  const { units } = notebook;
  const parsed = parseQuantity(text, quantity, units);
  if (!parsed.ok) return parsed;
  const { value } = parsed;
  const shown = (v: number) => formatQuantity(v, quantity, units);
  const told = (v: number) => limitText(v, quantity, units);
  const refused = (must: string): Entry => {
    const what = limit === 'step' ? 'step' : 'range';
    return { ok: false, message: `The ${what} of ${label} must ${must}, got ${asTyped(text, quantity, units)}.` };
  };
  if (limit === 'step') return value > 0 ? parsed : refused('be more than 0');
  const [end, most] = limit === 'min' ? ['start at', 'most'] : ['end at', 'least'];
  const outwards = (a: number, b: number) => (limit === 'min' ? a < b : a > b);
  for (const inner of innerBounds(notebook, parameter, limit)) {
    if (!outwards(inner.value, value)) continue;
    if (shown(inner.value) === shown(value)) return { ok: true, value: inner.value };
    return refused(`${end} ${shown(inner.value)} at ${most} (${inner.why})`);
  }
  for (const { spec, label: field } of fieldsUsing(notebook, parameter.key)) {
    if (spec.type !== 'number' || !outwards(value, spec[limit])) continue;
    if (shown(spec[limit]) === shown(value) || told(spec[limit]) === told(value))
      return { ok: true, value: spec[limit] };
    const why = limit === 'max' && spec.whyNotMore !== undefined ? `; ${spec.whyNotMore}` : '';
    return refused(`keep within ${told(spec.min)} to ${told(spec.max)} (all that ${field} can be${why})`);
  }
  return parsed;
}

/** What the new end may not cut off: values first, since the other end lies beyond them. */
function innerBounds({ scenarios }: Notebook, parameter: QuantityParameter, limit: 'min' | 'max'): readonly Bound[] {
  const values = scenarios.flatMap(({ name, parent, changes }) => {
    const value = parent === null ? parameter.value : changes[parameter.key];
    return typeof value === 'number' ? [{ value, why: `the value in ${name}` }] : [];
  });
  const farthestFirst = values.toSorted((a, b) => (limit === 'min' ? a.value - b.value : b.value - a.value));
  const other = limit === 'min' ? parameter.max : parameter.min;
  return [...farthestFirst, { value: other, why: 'its other end' }];
}
