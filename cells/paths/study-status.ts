import { html, nothing } from 'lit';

export interface StudyStatus {
  /** `waiting`: for the prediction of the floor itself. */
  readonly state: 'waiting' | 'running' | 'stopped' | 'done';
  /** Numbers studied so far; absent as long as nothing has been told. */
  readonly done: number | undefined;
  readonly total: number | undefined;
  onStop(): void;
  onGoOn(): void;
}

/** How far a study has come, and the button that ends it or goes on: a line that is always there, so that nothing jumps. */
export function studyStatus({ state, done = 0, total = 0, onStop, onGoOn }: StudyStatus) {
  const running = state === 'running';
  const stopped = state === 'stopped';
  return html`<div class=${stopped ? 'status' : 'status screen-only'}>
    ${
      running
        ? html`<progress
              class="late"
              aria-label="Numbers of the floor changed so far"
              max=${total || 1}
              value=${done}
            ></progress>
            <span class="late">Changing one number after the other${total > 0 ? `: ${done} of ${total}` : ''}\u00a0…</span>`
        : nothing
    }
    ${state === 'waiting' ? html`<span class="late">The floor itself is computed first …</span>` : nothing}
    ${state === 'done' ? html`All ${total} numbers have been changed in turn.` : nothing}
    <span role="status">${stopped ? stoppedText(done, total) : nothing}</span>
    ${
      running || stopped
        ? html`<button type="button" class=${running ? 'screen-only late' : 'screen-only'} @click=${running ? onStop : onGoOn}>
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
