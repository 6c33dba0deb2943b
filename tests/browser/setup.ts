import '#src/app/tokens.css';
import { afterEach, beforeEach, expect, vi } from 'vitest';

// Lit says once that it runs in development mode; every other warning fails the test that caused it.
(globalThis as { litIssuedWarnings?: Set<string> }).litIssuedWarnings = new Set(['dev-mode']);

let complaints: unknown[][];

beforeEach(() => {
  complaints = [];
  for (const kind of ['warn', 'error'] as const)
    vi.spyOn(console, kind).mockImplementation((...words: unknown[]) => {
      complaints.push(words);
    });
});

afterEach(() => {
  document.body.replaceChildren();
  vi.restoreAllMocks();
  expect(complaints).toEqual([]);
});
