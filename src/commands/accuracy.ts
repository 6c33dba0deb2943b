/**
 * npm run accuracy                 the accuracy table, printed
 * npm run accuracy -- --write      the same into src/acoustics/ACCURACY.md, its residuals into model-residuals.ts
 * npm run accuracy -- --fit        fits the constants with all rows and without each (minutes), prints them and keeps
 *                                  the folds; MODEL_CONSTANTS are then to be set by hand to the line "all"
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fitFolds } from './accuracy-folds.ts';
import { accuracyReport } from './accuracy-report.ts';
import { modelResidualsFile } from './model-residuals.ts';

const known = ['--write', '--fit'];
const unknown = process.argv.slice(2).filter((a) => !known.includes(a));
if (unknown.length > 0) {
  console.error(`options must be ${known.join(' or ')}, got ${unknown.join(' ')}`);
  process.exit(2);
}
const source = join(process.argv[1]!, '../..');
if (process.argv.includes('--fit')) {
  const folds = fitFolds((line) => console.error(line));
  writeFileSync(join(source, 'commands/accuracy-folds.json'), `${JSON.stringify(folds, null, 2)}\n`);
  console.log(JSON.stringify(folds.all, null, 2));
} else if (process.argv.includes('--write')) {
  writeFileSync(join(source, 'acoustics/ACCURACY.md'), accuracyReport());
  writeFileSync(join(source, 'acoustics/model-residuals.ts'), modelResidualsFile());
} else {
  console.log(accuracyReport());
}
