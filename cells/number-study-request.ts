import type { NumberStudy } from '#src/acoustics/number-study.ts';

/** How far a study has come: `done` of `total` numbers are in `study`. */
export interface StudyProgress {
  readonly done: number;
  readonly total: number;
  readonly study: NumberStudy;
}

/**
 * The wish to know what each number of a floor does to its sound: more than a prediction, and computed only when somebody
 * asks. The page puts its answer in, which rejects with the signal's reason once that is aborted, or with an Error whose
 * message is for the reader. Meanwhile it tells how far it has come, first of all that nothing is done yet or what is
 * known from before, and after every number.
 */
export class NumberStudyRequest extends Event {
  static readonly type = 'number-study-request';
  readonly scenario: string;
  readonly stack: string;
  readonly signal: AbortSignal;
  readonly tell: (progress: StudyProgress) => void;
  answer: Promise<NumberStudy> | undefined;

  constructor(
    scenario: string,
    stack: string,
    signal: AbortSignal,
    tell: (progress: StudyProgress) => void = () => {},
  ) {
    super(NumberStudyRequest.type, { bubbles: true, composed: true });
    this.scenario = scenario;
    this.stack = stack;
    this.signal = signal;
    this.tell = tell;
  }
}

declare global {
  interface HTMLElementEventMap {
    'number-study-request': NumberStudyRequest;
  }
}
