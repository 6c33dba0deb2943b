import { expect, test } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import { predictionFrom } from '#src/acoustics/prediction-from.ts';
import { REFERENCE_CONSTRUCTIONS } from '../published/reference-constructions.ts';

test.each(Object.entries(REFERENCE_CONSTRUCTIONS))(
  '%s: a prediction from 20 Hz, cut at 50 Hz, is the prediction from 50 Hz to the last digit',
  (_, floor) => {
    expect(predictionFrom(predict(floor, { lowestBand_Hz: 20 }), 50)).toEqual(predict(floor));
  },
);

test('what has no lower bands is handed back as it is', () => {
  const prediction = predict(REFERENCE_CONSTRUCTIONS.c100);
  expect(predictionFrom(prediction, 50)).toBe(prediction);
  expect(predictionFrom(prediction, 20)).toBe(prediction);
});
