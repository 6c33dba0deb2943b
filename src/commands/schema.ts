// Writes the JSON Schemas beside the code they are made from: npm run schema
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { jsonSchemaFiles } from './json-schema.ts';

for (const [name, text] of Object.entries(jsonSchemaFiles())) {
  const path = join('src/notebook', name);
  writeFileSync(path, text);
  console.log(`wrote ${path}`);
}
