import { expose } from 'comlink';
import { predict } from '#src/acoustics/predict.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { PredictApi } from './predict.api.ts';

expose({
  predict(construction, options) {
    try {
      return { ok: true, prediction: predict(construction, options) };
    } catch (error) {
      return { ok: false, message: messageOf(error) };
    }
  },
} satisfies PredictApi);
