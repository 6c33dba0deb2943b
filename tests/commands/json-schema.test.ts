import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jsonSchemaFiles } from '#src/commands/json-schema.ts';

const files = Object.entries(jsonSchemaFiles());

test.each(files)('%s in the repository is current: npm run schema', (name, text) => {
  expect(readFileSync(new URL(`../../src/notebook/${name}`, import.meta.url), 'utf8')).toBe(text);
});

test.each(files)('every reference in %s leads somewhere, and no object takes unknown keys', (_name, text) => {
  const schema = JSON.parse(text);
  const references = [...text.matchAll(/"\$ref": "#\/\$defs\/([^"]+)"/g)].map((m) => m[1]!);
  expect(references.length).toBeGreaterThan(0);
  for (const reference of references) expect(schema.$defs).toHaveProperty(reference);
  expect(text).not.toContain('"additionalProperties": {}');
  expect(schema).toMatchObject({ type: 'object', additionalProperties: false });
});
