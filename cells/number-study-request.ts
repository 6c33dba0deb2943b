import type { NumberStudy } from '#src/acoustics/number-study.ts';

/**
 * The wish to know what each number of a floor does to its sound: more than a prediction, and computed only when somebody
 * asks. The page puts its answer in, which rejects with the signal's reason once that is aborted, or with an Error whose
 * message is for the reader.
 */
export class NumberStudyRequest extends Event {
  static readonly type = 'number-study-request';
  readonly scenario: string;
  readonly stack: string;
  readonly signal: AbortSignal;
  answer: Promise<NumberStudy> | undefined;

  constructor(scenario: string, stack: string, signal: AbortSignal) {
    super(NumberStudyRequest.type, { bubbles: true, composed: true });
    this.scenario = scenario;
    this.stack = stack;
    this.signal = signal;
  }
}

declare global {
  interface HTMLElementEventMap {
    'number-study-request': NumberStudyRequest;
  }
}
