import type { Construction } from './construction.ts';
import type { Prediction, PredictOptions } from './prediction.ts';

export function predict(_construction: Construction, _options: PredictOptions = {}): Prediction {
  throw new Error('not written yet');
}
