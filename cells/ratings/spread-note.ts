import { listed } from '#src/acoustics/listed.ts';
import { RATING_ERRORS } from '#src/acoustics/model-residuals.ts';
import { decimal } from '#src/quantities/format-quantity.ts';

const NAMES = { STC: 'STC', Rw: 'Rw', IIC: 'IIC', Lnw: 'Ln,w' } as const;

/** How far single numbers were off where they could be compared, in one sentence. */
export function spreadNote(withWalls: boolean): string {
  const errors = (Object.keys(NAMES) as (keyof typeof NAMES)[]).map((key, i) => {
    const { meanAbsolute, worst, rows } = RATING_ERRORS[key];
    const average = decimal(meanAbsolute, 3, 1);
    // The first tells what the figures are, the others go by it.
    return i === 0
      ? `${NAMES[key]} by ${average} on average and ${worst} at worst (${rows} of them)`
      : `${NAMES[key]} by ${average} and ${worst} (${rows})`;
  });
  const walls = withWalls ? '; how far the walls are off comes on top' : '';
  return `Expect a spread: compared with measured floors and partitions that it was not fitted to, this model was off in ${listed(errors)}${walls}.`;
}
