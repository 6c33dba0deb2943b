import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { REFERENCE_ROLES, type ReferenceId } from '../../tests/published/reference-constructions.ts';
import { compare, octaveErrors_dB, RATING_KEYS, ratingError } from './accuracy-compare.ts';

const t0 = performance.now();
for (const id of Object.keys(REFERENCE_ROLES) as ReferenceId[]) {
  const c = compare(id, MODEL_CONSTANTS);
  const errors = octaveErrors_dB(c)
    .map((e) => e.toFixed(1).padStart(6))
    .join('');
  const ratings = RATING_KEYS.map((k) => [k, ratingError(c, k)] as const)
    .filter(([, e]) => e !== undefined)
    .map(([k, e]) => `${k} ${c.predicted[k]} (${e! > 0 ? '+' : ''}${e})`)
    .join('  ');
  console.log(
    id.padEnd(5),
    REFERENCE_ROLES[id].padEnd(8),
    c.predicted.TL_dB.map((v) => v.toFixed(0).padStart(3)).join(''),
    '|',
    errors.padEnd(36),
    '|',
    ratings,
  );
}
console.log(performance.now() - t0, 'ms');
