/** What a live value in a text may name: the last part of `value:stack/quantity`. */
import type { NamedFrequency, Prediction, Ratings, Sound } from '#src/acoustics/prediction.ts';
import type { QuantityKind, UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { massText, signed, signedMass, signedQuantity, wholeNumber } from '../shared/number-words.ts';

export interface LiveQuantity {
  readonly key: string;
  readonly label: string;
  /** Which sound it rates; absent: none. */
  readonly sound?: Sound;
  /** Number, with its unit where it has one. */
  show(prediction: Prediction, units: UnitSystem): string;
  /** The number alone, SI. */
  number(prediction: Prediction): number;
  /** A difference of two such numbers, with sign and unit. */
  showDifference(difference: number, units: UnitSystem): string;
}

/** Behind the key: the same value less that of the reference scenario, e.g. `stc-gain`. */
export const GAIN = '-gain';

/** Behind the key of a rating: what it is called, as walls are counted in it or not, e.g. `stc-name`. */
export const NAME = '-name';

const IMPACT: ReadonlySet<keyof Ratings> = new Set(['IIC', 'Lnw', 'CI', 'CI50_2500']);

function rating(key: string, name: keyof Ratings, label: string): LiveQuantity {
  const number = ({ ratings }: Prediction) => ratings[name];
  const show = (prediction: Prediction) => wholeNumber(number(prediction));
  return { key, label, sound: IMPACT.has(name) ? 'impact' : 'airborne', number, show, showDifference: signed };
}

function quantity(
  key: string,
  label: string,
  kind: QuantityKind,
  number: (prediction: Prediction) => number,
): LiveQuantity {
  return {
    key,
    label,
    number,
    show: (prediction, units) => formatQuantity(number(prediction), kind, units),
    showDifference: (difference, units) => signedQuantity(difference, kind, units),
  };
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
    // As in the tables of the same page.
    show: (p, units) => massText(p.surfaceMass_kg_m2, units),
    showDifference: signedMass,
  },
  quantity('height', 'overall height', 'length', (p) => p.height_m),
  quantity('f0', 'lowest mass-spring resonance f0', 'frequency', (p) =>
    lowest(p.resonances_Hz.filter((r) => r.kind === 'mass-spring-mass' || r.kind === 'floating')),
  ),
  quantity('fc', 'lowest critical frequency fc', 'frequency', (p) => lowest(p.criticalFrequencies_Hz)),
];

export function liveQuantity(key: string): LiveQuantity | undefined {
  return LIVE_QUANTITIES.find((q) => q.key === key);
}

function lowest(list: readonly NamedFrequency[]): number {
  return list.length === 0 ? NaN : Math.min(...list.map((f) => f.frequency_Hz));
}
