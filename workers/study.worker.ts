import { expose } from 'comlink';
import { studyNumber } from '#src/acoustics/number-study.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { StudyApi } from './study.api.ts';

expose({
  study(construction, number) {
    try {
      return { ok: true, outcome: studyNumber(construction, number) };
    } catch (error) {
      return { ok: false, message: messageOf(error) };
    }
  },
} satisfies StudyApi);
