/** What cells read of the results: a snapshot, each floor from the band that the cell asks for. */
import type { Result, ResultChoice, ResultsView } from '#cells/contract.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { predictionFrom } from '#src/acoustics/prediction-from.ts';
import type { Wanted } from './demand.ts';

/** Before anything was asked for. */
export const NO_RESULTS: ResultsView = { of: () => ({ state: 'computing' }) };

/** @param results Under their `slotId`. */
export function snapshot(results: ReadonlyMap<string, Result>): ResultsView {
  return {
    of: (scenarioId, stackId, { part = 'whole', lowestBand_Hz = 50 }: ResultChoice = {}) => {
      const result = results.get(slotId(scenarioId, stackId, part));
      return result
        ? fromBand(result, lowestBand_Hz)
        : { state: 'failed', message: 'This floor is not computed here.' };
    },
  };
}

export function slotId(scenario: string, stack: string, part: Wanted['part']): string {
  return part === 'whole' ? `${scenario}/${stack}` : `${scenario}/${stack}/${part}`;
}

/** Predictions without the bands that only some cells ask for: the same object each time. */
const CUT = new WeakMap<Prediction, Prediction>();

function fromBand(result: Result, lowest_Hz: 20 | 50): Result {
  const { prediction } = result;
  if (!prediction || prediction.bands_Hz[0]! >= lowest_Hz) return result;
  const cut = CUT.get(prediction) ?? predictionFrom(prediction, lowest_Hz);
  CUT.set(prediction, cut);
  return { ...result, prediction: cut };
}
