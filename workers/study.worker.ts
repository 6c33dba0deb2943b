import { expose } from 'comlink';
import { studyNumbers } from '#src/acoustics/number-study.ts';
import { messageOf } from '#src/notebook/message-of.ts';
import type { StudyApi } from './study.api.ts';

expose({
  study(construction, numbers) {
    try {
      return { ok: true, study: studyNumbers(construction, numbers) };
    } catch (error) {
      return { ok: false, message: messageOf(error) };
    }
  },
} satisfies StudyApi);
