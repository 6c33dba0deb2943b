/** What the page asks of the worker that studies the numbers of a construction: plain data both ways. */
import type { Construction } from '#src/acoustics/construction.ts';
import type { NumberOutcome, StudiedNumber } from '#src/acoustics/number-study.ts';

/** A refusal is data too: an error that crosses a worker keeps nothing but its message. */
export type StudyOutcome =
  | { readonly ok: true; readonly outcome: NumberOutcome }
  | { readonly ok: false; readonly message: string };

/** One number a call: what has been studied is there before the rest is, and stays when the rest is given up. */
export interface StudyApi {
  study(construction: Construction, number: StudiedNumber): StudyOutcome;
}
