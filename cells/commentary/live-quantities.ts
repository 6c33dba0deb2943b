/** What a live value in a text may name: the last part of `value:stack/quantity`. */
import type { NamedFrequency, Prediction, Ratings } from '#src/acoustics/prediction.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { wholeNumber } from '../shared/number-words.ts';

export interface LiveQuantity {
  readonly key: string;
  readonly label: string;
  /** Number, with its unit where it has one. */
  show(prediction: Prediction, units: UnitSystem): string;
  /** The plain number, for the difference to the reference scenario; absent where none makes sense. */
  readonly number?: (prediction: Prediction) => number;
}

/** Behind the key: the same value less that of the reference scenario, e.g. `stc-gain`. */
export const GAIN = '-gain';

function rating(key: string, name: keyof Ratings, label: string): LiveQuantity {
  const number = ({ ratings }: Prediction) => ratings[name];
  return { key, label, number, show: (prediction) => wholeNumber(number(prediction)) };
}

function frequency(key: string, label: string, of: (prediction: Prediction) => number): LiveQuantity {
  return { key, label, number: of, show: (prediction, units) => formatQuantity(of(prediction), 'frequency', units) };
}

export const LIVE_QUANTITIES: readonly LiveQuantity[] = [
  rating('stc', 'STC', 'STC'),
  rating('rw', 'Rw', 'Rw'),
  rating('c', 'C', 'C'),
  rating('ctr', 'Ctr', 'Ctr'),
  rating('oitc', 'OITC', 'OITC'),
  rating('iic', 'IIC', 'IIC'),
  rating('lnw', 'Lnw', 'Ln,w'),
  rating('ci', 'CI', 'CI'),
  rating('ci50-2500', 'CI50_2500', 'CI,50–2500'),
  rating('c50-3150', 'C50_3150', 'C50–3150'),
  rating('ctr50-3150', 'Ctr50_3150', 'Ctr,50–3150'),
  rating('c50-5000', 'C50_5000', 'C50–5000'),
  rating('ctr50-5000', 'Ctr50_5000', 'Ctr,50–5000'),
  rating('c100-5000', 'C100_5000', 'C100–5000'),
  rating('ctr100-5000', 'Ctr100_5000', 'Ctr,100–5000'),
  {
    key: 'surface-mass',
    label: 'mass per area',
    number: (p) => p.surfaceMass_kg_m2,
    show: (p, units) => formatQuantity(p.surfaceMass_kg_m2, 'surface-mass', units),
  },
  {
    key: 'height',
    label: 'overall height',
    number: (p) => p.height_m,
    show: (p, units) => formatQuantity(p.height_m, 'length', units),
  },
  frequency('f0', 'lowest mass-spring resonance f0', (p) =>
    lowest(p.resonances_Hz.filter((r) => r.kind === 'mass-spring-mass' || r.kind === 'floating')),
  ),
  frequency('fc', 'lowest critical frequency fc', (p) => lowest(p.criticalFrequencies_Hz)),
];

export function liveQuantity(key: string): LiveQuantity | undefined {
  return LIVE_QUANTITIES.find((q) => q.key === key);
}

function lowest(list: readonly NamedFrequency[]): number {
  return list.length === 0 ? NaN : Math.min(...list.map((f) => f.frequency_Hz));
}
