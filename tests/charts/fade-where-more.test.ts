import { expect, test } from 'vitest';
import { moreOf } from '#src/charts/fade-where-more.ts';

test.each([
  ['what fits hides nothing', 0, 300, 300, ''],
  ['at the start the rest lies to the right', 0, 500, 300, 'right'],
  ['in between it lies on both sides', 80, 500, 300, 'left right'],
  ['at the end it lies to the left', 200, 500, 300, 'left'],
  ['a pixel lost in rounding is nothing', 1, 302, 300, ''],
])('%s', (_, scrollLeft, scrollWidth, clientWidth, expected) => {
  expect(moreOf({ scrollLeft, scrollWidth, clientWidth })).toBe(expected);
});
