import { expect, test } from 'vitest';
import { hertzText } from '#src/charts/hertz-text.ts';

test.each([
  [9.44, '9.4 Hz'],
  [20.4, '20 Hz'],
  [186.3, '186 Hz'],
  [999.6, '1000 Hz'],
  [2816, '2820 Hz'],
  [19_243, '19200 Hz'],
  [357_660, '358000 Hz'],
  [Infinity, '–'],
])('%d Hz reads %s: three digits, no finer than a model knows it', (frequency_Hz, text) => {
  expect(hertzText(frequency_Hz)).toBe(text);
});
