import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { REFERENCE_ROLES, type ReferenceId } from '../../tests/published/reference-constructions.ts';
import { type Comparison, compare, OCTAVES_Hz, octaveErrors_dB, RATING_KEYS } from './accuracy-compare.ts';
import { constantsWithout } from './accuracy-folds.ts';
import { errorsOf, meanAbsolute, worst } from './accuracy-report.ts';

/** Every reference construction that is judged: fitted ones with constants that never saw them. */
function unseenComparisons(): readonly Comparison[] {
  const ids = (Object.keys(REFERENCE_ROLES) as ReferenceId[]).filter((id) => REFERENCE_ROLES[id] !== 'printed');
  return ids.map((id) => compare(id, REFERENCE_ROLES[id] === 'fitted' ? constantsWithout(id) : MODEL_CONSTANTS));
}

/** Rms of predicted minus measured transmission loss, octave by octave, where there is a measured spectrum. */
function residualRms_dB(comparisons: readonly Comparison[]): number[] {
  const errors = comparisons.map(octaveErrors_dB).filter((row) => row.length > 0);
  return OCTAVES_Hz.map((_, i) => Math.sqrt(errors.reduce((sum, row) => sum + row[i]! ** 2, 0) / errors.length));
}

/** `src/acoustics/model-residuals.ts` as text. */
export function modelResidualsFile(): string {
  const comparisons = unseenComparisons();
  const rows = residualRms_dB(comparisons).map((rms_dB, i) => `  [${OCTAVES_Hz[i]}, ${rms_dB.toFixed(1)}],`);
  const errors = errorsOf(comparisons);
  const ratings = RATING_KEYS.map((key) => {
    const of = errors[key];
    return `  ${key}: { rows: ${of.length}, meanAbsolute: ${Number(meanAbsolute(of).toFixed(1))}, worst: ${worst(of)} },`;
  });
  return [
    "import type { BandTable } from './standards/table.ts';",
    '',
    '/**',
    ' * Rms of predicted minus measured transmission loss in octave bands, dB: the reference constructions of ACCURACY.md, each',
    ' * predicted with constants that were fitted without it. Written by `npm run accuracy -- --write`.',
    ' */',
    'export const MODEL_RESIDUAL_RMS: BandTable = [',
    ...rows,
    '];',
    '',
    '/** The same of single numbers: of how many constructions, and how far off they were on average and at most. */',
    'export const RATING_ERRORS = {',
    ...ratings,
    '} as const;',
    '',
  ].join('\n');
}
