import type { Ratings, Sound } from '#src/acoustics/prediction.ts';
import { apparentName } from '#src/acoustics/ratings/apparent-names.ts';

/** What the number under each key is called: `STC` keeps its key, and with the walls counted it is an ASTC. */
export type RatingNames = Readonly<Record<keyof typeof LABORATORY, string>>;

const LABORATORY = {
  STC: { name: 'STC', sound: 'airborne' },
  OITC: { name: 'OITC', sound: 'airborne' },
  Rw: { name: 'Rw', sound: 'airborne' },
  IIC: { name: 'IIC', sound: 'impact' },
  Lnw: { name: 'Ln,w', sound: 'impact' },
} as const satisfies Partial<Record<keyof Ratings, { readonly name: string; readonly sound: Sound }>>;

/** @param wallsCounted The sounds that the walls are counted for. */
export function ratingNames(wallsCounted: readonly Sound[]): RatingNames {
  const named = Object.entries(LABORATORY).map(([key, { name, sound }]) => [
    key,
    wallsCounted.includes(sound) ? apparentName(name) : name,
  ]);
  return Object.fromEntries(named) as RatingNames;
}
