/** What the page asks of the worker that studies the numbers of a construction: plain data both ways. */
import type { Construction } from '#src/acoustics/construction.ts';
import type { NumberStudy, StudiedNumber } from '#src/acoustics/number-study.ts';

/** A refusal is data too: an error that crosses a worker keeps nothing but its message. */
export type StudyOutcome =
  | { readonly ok: true; readonly study: NumberStudy }
  | { readonly ok: false; readonly message: string };

export interface StudyApi {
  study(construction: Construction, numbers: readonly StudiedNumber[]): StudyOutcome;
}
