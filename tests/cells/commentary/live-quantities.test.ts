import { expect, test } from 'vitest';
import { liveQuantity } from '#cells/commentary/live-quantities.ts';
import { RATING_ROWS } from '#cells/ratings/rating-rows.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';

test.each(['SI', 'inch-pound'] as const)('a mass reads the same in a text as in the table of ratings (%s)', (units) => {
  const prediction = { surfaceMass_kg_m2: 30.2 } as Prediction;
  const row = RATING_ROWS.find((r) => r.key === 'surface-mass')!;
  const live = liveQuantity('surface-mass')!;
  expect(live.show(prediction, units)).toBe(row.show(prediction, units));
  expect(live.showDifference(66.88, units)).toBe(row.showDifference!(66.88, units));
});
