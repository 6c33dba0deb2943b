import { formatQuantity } from './format-quantity.ts';
import type { QuantityKind, UnitSystem } from './kinds.ts';

/** From here on a length is told in metres or feet, for nobody pictures 2000 mm or 78.74 in. Our own choice, m. */
const LONG_m = 1;

/** How far a quantity may go, for people: `100 mm`, `2 m`, `6 ft 6 3/4 in`. */
export function limitText(value: number, kind: QuantityKind, system: UnitSystem): string {
  const isLong = kind === 'length' && Math.abs(value) >= LONG_m;
  return formatQuantity(value, isLong ? 'span' : kind, system);
}
