import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { modelResidualsFile } from '../../src/commands/model-residuals.ts';

it('the residuals that uncertainty is computed from are those of the present engine', () => {
  const file = new URL('../../src/acoustics/model-residuals.ts', import.meta.url);
  expect(readFileSync(file, 'utf8')).toBe(modelResidualsFile());
});
