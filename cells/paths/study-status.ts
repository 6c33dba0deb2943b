import { html, nothing } from 'lit';

export interface StudyStatus {
  /** `waiting`: for the prediction of the floor itself. */
  readonly state: 'waiting' | 'running' | 'stopped' | 'done';
  /** That it stands where the table will be. */
  readonly alone: boolean;
  /** That it is in sight from the start: most studies are done before anybody could read of them. */
  readonly atOnce: boolean;
  /** Numbers studied so far; absent as long as nothing has been told. */
  readonly done: number | undefined;
  readonly total: number | undefined;
  onStop(): void;
  onGoOn(): void;
}

/** How far a study has come, and the button that ends it or goes on: a line that is always there, so that nothing jumps. */
export function studyStatus({ state, alone, atOnce, done = 0, total = 0, onStop, onGoOn }: StudyStatus) {
  const running = state === 'running';
  const stopped = state === 'stopped';
  // A button that the keyboard is on would lose it by being hidden, be it for a moment.
  const late = atOnce ? '' : 'late';
  return html`<div
    class="status ${alone ? 'empty' : ''} ${stopped ? '' : 'screen-only'}"
    tabindex="-1"
    aria-busy=${alone && !stopped}
  >
    ${
      running
        ? html`<progress
              class=${late}
              aria-label="Numbers of the floor changed so far"
              max=${total || 1}
              value=${done}
            ></progress>
            <span class=${late}>Changing one number after the other${total > 0 ? `: ${done} of ${total}` : ''}\u00a0…</span>`
        : nothing
    }
    ${state === 'waiting' ? html`<span class="late">The floor itself is computed first …</span>` : nothing}
    ${state === 'done' ? html`All ${total} numbers have been changed in turn.` : nothing}
    <span role="status">${stopped ? stoppedText(done, total) : nothing}</span>
    ${
      running || stopped
        ? html`<button type="button" class="screen-only ${running ? late : ''}" @click=${running ? onStop : onGoOn}>
            ${running ? 'Stop' : 'Go on'}
          </button>`
        : nothing
    }
  </div>`;
}

function stoppedText(done: number, total: number): string {
  if (done === 0) return 'Stopped before the first number was done.';
  return `Stopped after ${done} of ${total} numbers; what the others do is left out.`;
}
