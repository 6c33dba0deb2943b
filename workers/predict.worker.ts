import { expose } from 'comlink';
import { predict } from '#src/acoustics/predict.ts';
import type { PredictApi } from './predict.api.ts';

expose({
  predict(construction, options) {
    try {
      return { ok: true, prediction: predict(construction, options) };
    } catch (error) {
      return { ok: false, message: error instanceof Error ? error.message : String(error) };
    }
  },
} satisfies PredictApi);
