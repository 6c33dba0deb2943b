/** Signs on buttons, drawn on a grid of 16. Decoration only: the button carries the name. */
import { html, nothing, type TemplateResult } from 'lit';

const PATHS = {
  add: 'M8 3v10M3 8h10',
  close: 'M4 4l8 8M12 4l-8 8',
  up: 'M8 13V3.5M4 7l4-4l4 4',
  down: 'M8 3v9.5M4 9l4 4l4-4',
  'fold-open': 'M4 6l4 4l4-4',
  'fold-closed': 'M6 4l4 4l-4 4',
  copy: 'M5.5 5.5h8v8h-8zM10.5 5.5v-3h-8v8h3',
  remove: 'M3 4.5h10M6.5 4.5v-2h3v2M4.5 4.5l.6 9h5.8l.6-9M7 7v4M9 7v4',
  shown: 'M1.5 8C4 4.4 6 3.5 8 3.5S12 4.4 14.5 8C12 11.6 10 12.5 8 12.5S4 11.6 1.5 8zM8 6a2 2 0 1 0 0 4a2 2 0 1 0 0-4z',
  hidden: 'M1.5 8C4 4.4 6 3.5 8 3.5S12 4.4 14.5 8C12 11.6 10 12.5 8 12.5S4 11.6 1.5 8zM2.5 13.5l11-11',
  grip: 'M8 2.5v11M5.5 5L8 2.5L10.5 5M5.5 11L8 13.5L10.5 11',
  undo: 'M3 6.5h6.5a3.5 3.5 0 0 1 0 7H6M3 6.5l3-3M3 6.5l3 3',
  redo: 'M13 6.5H6.5a3.5 3.5 0 0 0 0 7H10M13 6.5l-3-3M13 6.5l-3 3',
  // Dots are lines of no length with round ends.
  more: 'M3.5 8v.01M8 8v.01M12.5 8v.01',
  fork: 'M4 2v12M4 10c0-4 8-2 8-7M9.5 5L12 2.5L14.5 5',
  reset: 'M12.5 5A5.3 5.3 0 1 0 13.3 8.5M13 2v3.2h-3.2',
  edit: 'M3 13l.7-3L11 2.7l2.3 2.3L6 12.3z',
} as const;

export type IconName = keyof typeof PATHS;

export function icon(name: IconName): TemplateResult {
  return html`<svg
    class="sign"
    viewBox="0 0 16 16"
    aria-hidden="true"
    style=${name === 'more' ? 'stroke-width: 2' : nothing}
  >
    <path d=${PATHS[name]}></path>
  </svg>`;
}
