import { expect, test } from 'vitest';
import { saidOnce } from '#cells/shared/said-once.ts';
import type { Scenario } from '#src/notebook/types.ts';
import { smallNotebook } from '../../notebook/small-notebook.ts';

const [a, b, c] = smallNotebook().scenarios as [Scenario, Scenario, Scenario];

test('remarks are said once, each of exactly those scenarios that have it', () => {
  const each = [
    { scenario: a, remarks: ['deep', 'heavy'] },
    { scenario: b, remarks: ['deep'] },
    { scenario: c, remarks: ['heavy', 'soft', 'deep'] },
  ];
  expect(saidOnce(each)).toEqual([
    { scenarios: [a, b, c], remarks: ['deep'] },
    { scenarios: [a, c], remarks: ['heavy'] },
    { scenarios: [c], remarks: ['soft'] },
  ]);
});

test('what the same scenarios have stays in one line', () => {
  const remarks = ['deep', 'heavy'];
  expect(saidOnce([a, b].map((scenario) => ({ scenario, remarks })))).toEqual([{ scenarios: [a, b], remarks }]);
  expect(saidOnce([])).toEqual([]);
});
