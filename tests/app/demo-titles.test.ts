import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { DEMO_NOTEBOOKS } from '#src/app/demo-notebooks.ts';
import { titleOfDemo } from '#src/app/demo-titles.ts';

test('the shelf calls every notebook that comes with the page by the title in its file', () => {
  expect(DEMO_NOTEBOOKS.length).toBeGreaterThan(0);
  for (const demo of DEMO_NOTEBOOKS) {
    const file = new URL(`../../demo-notebooks/${basename(demo.path)}`, import.meta.url);
    expect(titleOfDemo(demo)).toBe(JSON.parse(readFileSync(file, 'utf8')).title);
  }
});

test('a notebook that is not among them has no title', () => {
  expect(titleOfDemo({ path: 'nowhere.slabspring.json', url: '' })).toBe('Without a title');
});
