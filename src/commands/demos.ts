// Writes the live values of the demo notebooks as the engine computes them now: npm run demos
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readNotebook } from '#src/notebook/read-file.ts';
import { FILE_ENDING, writeNotebook } from '#src/notebook/write-file.ts';
import { withCurrentValues } from './current-values.ts';

const folder = 'demo-notebooks';

for (const name of readdirSync(folder).filter((file) => file.endsWith(FILE_ENDING))) {
  const path = join(folder, name);
  const reading = readNotebook(readFileSync(path, 'utf8'));
  if (reading.ok) {
    writeFileSync(path, writeNotebook(withCurrentValues(reading.notebook)));
    console.log(`wrote ${path}`);
  } else {
    for (const { message } of reading.problems) console.error(`${path}: ${message}`);
    process.exitCode = 1;
  }
}
