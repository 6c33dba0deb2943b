import { expose } from 'comlink';
import { partOfFloor } from '#src/acoustics/floating-part.ts';
import { predict } from '#src/acoustics/predict.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { PredictApi } from './predict.api.ts';

expose({
  predict(construction, options, part = 'whole') {
    try {
      return { ok: true, prediction: predict(partOfFloor(construction, part), options) };
    } catch (error) {
      return { ok: false, message: messageOf(error) };
    }
  },
} satisfies PredictApi);
