/** The single numbers of a floor-ceiling, as the lines of a table. */
import type { Prediction, Ratings } from '#src/acoustics/prediction.ts';
import { apparentName } from '#src/acoustics/ratings/apparent-names.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { massText, signedMass, signedQuantity, wholeNumber } from '../shared/number-words.ts';

export interface RatingRow {
  readonly key: string;
  readonly group: 'Airborne' | 'Impact' | 'Build-up';
  readonly label: string;
  readonly about: string;
  /** Whether a greater number is better ('more'), worse ('less') or neither. */
  readonly better: 'more' | 'less' | 'neither';
  number(prediction: Prediction): number;
  show(prediction: Prediction, units: UnitSystem): string;
  /** The difference to the reference, with sign; whole numbers unless given. */
  readonly showDifference?: (difference: number, units: UnitSystem) => string;
}

/** What a row is called, and what it is, where the walls are counted in it or not. */
export function rowWords(row: RatingRow, withWalls: boolean): { readonly label: string; readonly about: string } {
  if (!withWalls) return row;
  return { label: apparentName(row.label), about: `${row.about}; floor and walls together` };
}

/** A rating with the spectrum adaptation term added, the term in brackets. */
function withTerm(
  row: Pick<RatingRow, 'key' | 'group' | 'label' | 'about' | 'better'>,
  rating: 'Rw' | 'Lnw',
  term: keyof Ratings,
): RatingRow {
  const number = ({ ratings }: Prediction) => ratings[rating] + ratings[term];
  return { ...row, number, show: (p) => `${wholeNumber(number(p))} (${wholeNumber(p.ratings[term])})` };
}

export const RATING_ROWS: readonly RatingRow[] = [
  {
    key: 'stc',
    group: 'Airborne',
    label: 'STC',
    about: 'sound transmission class, ASTM E413',
    better: 'more',
    number: ({ ratings }) => ratings.STC,
    show: ({ ratings }) => wholeNumber(ratings.STC),
  },
  {
    key: 'rw',
    group: 'Airborne',
    label: 'Rw (C; Ctr)',
    about: 'weighted sound reduction index with its terms, ISO 717-1',
    better: 'more',
    number: ({ ratings }) => ratings.Rw,
    show: ({ ratings }) => `${wholeNumber(ratings.Rw)} (${wholeNumber(ratings.C)}; ${wholeNumber(ratings.Ctr)})`,
  },
  withTerm(
    {
      key: 'c50-5000',
      group: 'Airborne',
      label: 'Rw + C50–5000',
      about: 'weighted sound reduction index with the low bands, for living noise, ISO 717-1',
      better: 'more',
    },
    'Rw',
    'C50_5000',
  ),
  withTerm(
    {
      key: 'ctr50-5000',
      group: 'Airborne',
      label: 'Rw + Ctr,50–5000',
      about: 'weighted sound reduction index with the low bands, for traffic and bass, ISO 717-1',
      better: 'more',
    },
    'Rw',
    'Ctr50_5000',
  ),
  {
    key: 'oitc',
    group: 'Airborne',
    label: 'OITC',
    about: 'outdoor–indoor transmission class, ASTM E1332',
    better: 'more',
    number: ({ ratings }) => ratings.OITC,
    show: ({ ratings }) => wholeNumber(ratings.OITC),
  },
  {
    key: 'iic',
    group: 'Impact',
    label: 'IIC',
    about: 'impact insulation class, ASTM E989',
    better: 'more',
    number: ({ ratings }) => ratings.IIC,
    show: ({ ratings }) => wholeNumber(ratings.IIC),
  },
  {
    key: 'lnw',
    group: 'Impact',
    label: 'Ln,w (CI)',
    about: 'weighted normalised impact level with its term, ISO 717-2; less is better',
    better: 'less',
    number: ({ ratings }) => ratings.Lnw,
    show: ({ ratings }) => `${wholeNumber(ratings.Lnw)} (${wholeNumber(ratings.CI)})`,
  },
  withTerm(
    {
      key: 'ci50-2500',
      group: 'Impact',
      label: 'Ln,w + CI,50–2500',
      about: 'weighted normalised impact level with the low bands, ISO 717-2; less is better',
      better: 'less',
    },
    'Lnw',
    'CI50_2500',
  ),
  {
    key: 'surface-mass',
    group: 'Build-up',
    label: 'Mass per area',
    about: 'leaves, covering, fill and joists of the floor; added mass is load for a structural engineer',
    better: 'neither',
    number: (p) => p.surfaceMass_kg_m2,
    show: (p, units) => massText(p.surfaceMass_kg_m2, units),
    showDifference: signedMass,
  },
  {
    key: 'height',
    group: 'Build-up',
    label: 'Height',
    about: 'of the whole build-up',
    better: 'neither',
    number: (p) => p.height_m,
    show: (p, units) => formatQuantity(p.height_m, 'length', units),
    showDifference: (difference, units) => signedQuantity(difference, 'length', units),
  },
];
