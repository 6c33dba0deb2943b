import { MODEL_CONSTANTS, type ModelConstants } from '#src/acoustics/model-constants.ts';
import { REFERENCE_ROLES, type ReferenceId } from '../../tests/published/reference-constructions.ts';
import { FITTED_CONSTANTS, fitConstants } from './accuracy-fit.ts';
import folds from './accuracy-folds.json';

/** Ids of the constructions that take part in the fit. */
export const FITTED_IDS = (Object.keys(REFERENCE_ROLES) as ReferenceId[]).filter(
  (id) => REFERENCE_ROLES[id] === 'fitted',
);

/** Fitted constants by key: with every construction ('all'), or without the one named. */
export type Folds = Record<string, Record<string, number>>;

/** The result of the last `accuracy --fit`, kept in the repository because a fit takes minutes. */
export const STORED_FOLDS: Folds = folds;

/** The model's constants as the fold without `id` has them. */
export function constantsWithout(id: ReferenceId): ModelConstants {
  return { ...MODEL_CONSTANTS, ...STORED_FOLDS[id] };
}

/** Fits everything, then everything but one, each time anew from the constants of the whole. */
export function fitFolds(report: (line: string) => void): Folds {
  const all = fitConstants(FITTED_IDS, MODEL_CONSTANTS);
  report(`all: misfit ${all.misfit.toFixed(2)}`);
  const found: Folds = { all: fittedOnly(all.constants) };
  for (const id of FITTED_IDS) {
    const without = fitConstants(
      FITTED_IDS.filter((other) => other !== id),
      all.constants,
    );
    report(`without ${id}: misfit ${without.misfit.toFixed(2)}`);
    found[id] = fittedOnly(without.constants);
  }
  return found;
}

function fittedOnly(constants: ModelConstants): Record<string, number> {
  return Object.fromEntries(FITTED_CONSTANTS.map(({ key }) => [key, Number(constants[key].toPrecision(3))]));
}
