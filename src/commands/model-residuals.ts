import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { REFERENCE_ROLES, type ReferenceId } from '../../tests/published/reference-constructions.ts';
import { compare, OCTAVES_Hz, octaveErrors_dB } from './accuracy-compare.ts';
import { constantsWithout } from './accuracy-folds.ts';

/**
 * Rms of predicted minus measured transmission loss, octave by octave, over every reference construction that is judged and
 * has a measured spectrum: fitted ones with constants that never saw them.
 */
export function residualRms_dB(): number[] {
  const ids = (Object.keys(REFERENCE_ROLES) as ReferenceId[]).filter((id) => REFERENCE_ROLES[id] !== 'printed');
  const errors = ids
    .map((id) =>
      octaveErrors_dB(compare(id, REFERENCE_ROLES[id] === 'fitted' ? constantsWithout(id) : MODEL_CONSTANTS)),
    )
    .filter((row) => row.length > 0);
  return OCTAVES_Hz.map((_, i) => Math.sqrt(errors.reduce((sum, row) => sum + row[i]! ** 2, 0) / errors.length));
}

/** `src/acoustics/model-residuals.ts` as text. */
export function modelResidualsFile(): string {
  const rows = residualRms_dB().map((rms_dB, i) => `  [${OCTAVES_Hz[i]}, ${rms_dB.toFixed(1)}],`);
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
  ].join('\n');
}
