/** What the page asks of a prediction worker: plain data both ways. */
import type { Construction } from '#src/acoustics/construction.ts';
import type { Prediction, PredictOptions } from '#src/acoustics/prediction.ts';

/** A refusal is data too: an error that crosses a worker keeps nothing but its message. */
export type PredictOutcome =
  | { readonly ok: true; readonly prediction: Prediction }
  | { readonly ok: false; readonly message: string };

export interface PredictApi {
  predict(construction: Construction, options: PredictOptions): PredictOutcome;
}
