/**
 * How buttons, fields and tables look, in the page and in every cell alike. Put it first in an element's `styles`:
 *
 *   static override styles = [controlStyles, css`…`];
 *
 * Classes: `quiet` (a button without frame), `icon` (a square button that holds one sign), `primary` (the one thing to
 * do here), `danger`; `field` (label, input, help and error on top of each other); `error`, `caution`, `note` (texts);
 * `number` (right-aligned tabular digits); `scroll` (a wide table scrolls by itself, never the page; add
 * `fadeWhereMore()`); `better`, `worse` (differences); `visually-hidden`; `screen-only` (left out on paper);
 * `awaited` (fades while it is `aria-busy`), `late` (not seen where it takes no time).
 */
import { css } from 'lit';
import { fadeStyles } from '#src/charts/fade-where-more.ts';
import { hiddenFromSight } from '#src/charts/hidden-from-sight.ts';

export const controlStyles = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  :host {
    display: block;
    font-family: var(--sans);
    font-size: var(--size-ui);
    line-height: 1.4;
    color: var(--ink);
    font-variant-numeric: tabular-nums lining-nums;
  }
  :host([hidden]),
  [hidden] {
    display: none !important;
  }

  h2,
  h3,
  h4 {
    margin: 0;
    font-family: var(--text);
    font-weight: 600;
    line-height: 1.25;
    text-wrap: balance;
  }
  h2 {
    font-size: var(--size-h2);
  }
  h3 {
    font-size: var(--size-body);
  }
  h4 {
    font-size: var(--size-ui);
  }
  p {
    margin: 0 0 var(--space-2);
  }

  button,
  input,
  select,
  textarea {
    font: inherit;
    color: inherit;
    letter-spacing: inherit;
  }
  button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    gap: var(--space-2);
    min-height: 1.875rem;
    padding: 0 var(--space-3);
    border: 1px solid var(--hairline-strong);
    border-radius: var(--radius);
    background: var(--paper-raised);
    cursor: pointer;
    white-space: nowrap;
  }
  button:hover:not(:disabled, [aria-pressed="true"]) {
    border-color: var(--ink);
    background: var(--paper-sunk);
  }
  button:disabled {
    color: var(--ink-faint);
    border-color: var(--hairline);
    cursor: default;
  }
  button.quiet {
    border-color: transparent;
    background: none;
    color: var(--ink-soft);
    padding: 0 var(--space-2);
  }
  button.quiet:hover:not(:disabled) {
    color: var(--ink);
    background: var(--paper-sunk);
  }
  button.quiet:is(:disabled, [aria-disabled="true"]) {
    color: var(--ink-faint);
  }
  button[aria-disabled="true"] svg {
    opacity: 0.55;
  }
  button.icon {
    width: 1.875rem;
    padding: 0;
  }
  button.primary {
    border-color: var(--accent);
    background: var(--accent);
    color: var(--accent-ink);
  }
  button.primary:hover:not(:disabled) {
    background: color-mix(in srgb, var(--accent) 86%, var(--ink));
  }
  button.danger {
    color: var(--error-ink);
  }
  button[aria-pressed="true"] {
    border-color: var(--ink);
    background: var(--ink);
    color: var(--paper);
  }
  svg.sign {
    flex: none;
    width: 1em;
    height: 1em;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.5;
    stroke-linecap: round;
    stroke-linejoin: round;
  }

  :focus-visible {
    outline: 2px solid var(--focus);
    outline-offset: 2px;
  }

  input:not([type="range"], [type="checkbox"], [type="radio"], [type="file"]),
  select,
  textarea {
    min-height: 1.875rem;
    padding: 0 var(--space-2);
    border: 1px solid var(--hairline-strong);
    border-radius: var(--radius);
    background: var(--paper-raised);
  }
  textarea {
    padding: var(--space-2);
    line-height: 1.5;
    resize: vertical;
  }
  select {
    max-width: 100%;
    text-overflow: ellipsis;
  }
  [aria-invalid="true"]:not(:focus-visible) {
    border-color: var(--error-ink) !important;
  }
  input[type="checkbox"],
  input[type="radio"] {
    width: 1rem;
    height: 1rem;
    margin: 0;
    accent-color: var(--accent);
  }
  label:has(> input[type="checkbox"], > input[type="radio"]) {
    display: inline-flex;
    align-items: center;
    gap: var(--space-2);
    min-height: 1.5rem;
  }

  input[type="range"] {
    appearance: none;
    width: 100%;
    min-width: 5rem;
    height: 1.5rem;
    margin: 0;
    background: none;
    cursor: pointer;
  }
  input[type="range"]::-webkit-slider-runnable-track {
    height: 2px;
    background: var(--hairline-strong);
  }
  input[type="range"]::-moz-range-track {
    height: 2px;
    background: var(--hairline-strong);
  }
  input[type="range"]::-webkit-slider-thumb {
    appearance: none;
    width: 0.75rem;
    height: 1.125rem;
    margin-top: calc((2px - 1.125rem) / 2);
    border: 1px solid var(--ink);
    border-radius: var(--radius);
    background: var(--paper-raised);
  }
  input[type="range"]::-moz-range-thumb {
    box-sizing: border-box;
    width: 0.75rem;
    height: 1.125rem;
    border: 1px solid var(--ink);
    border-radius: var(--radius);
    background: var(--paper-raised);
  }
  input[type="range"]:hover::-webkit-slider-thumb,
  input[type="range"]:active::-webkit-slider-thumb {
    background: var(--ink);
  }
  input[type="range"]:hover::-moz-range-thumb,
  input[type="range"]:active::-moz-range-thumb {
    background: var(--ink);
  }

  .field {
    display: grid;
    gap: var(--space-1);
    align-content: start;
  }
  .field > label {
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  .note {
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  .error {
    color: var(--error-ink);
    font-size: var(--size-small);
  }
  .caution {
    padding: var(--space-2) var(--space-3);
    border-left: 3px solid var(--warn-ink);
    background: var(--warn-paper);
    color: var(--ink);
    font-size: var(--size-small);
  }

  .scroll {
    overflow-x: auto;
    max-width: 100%;
  }
  ${fadeStyles}
  table {
    border-collapse: collapse;
    width: 100%;
  }
  th,
  td {
    padding: var(--space-1) var(--space-3) var(--space-1) 0;
    border-bottom: 1px solid var(--hairline);
    /* The ground of a head that stays in sight must not cover the hairlines. */
    background-clip: padding-box;
    text-align: left;
    vertical-align: baseline;
    font-weight: 400;
  }
  thead th {
    border-bottom-color: var(--hairline-strong);
    color: var(--ink-soft);
    font-size: var(--size-small);
    vertical-align: bottom;
  }
  tr:last-child > :is(th, td) {
    border-bottom-color: transparent;
  }
  .number {
    text-align: right;
    font-variant-numeric: tabular-nums lining-nums;
    white-space: nowrap;
  }
  .better {
    color: var(--better);
  }
  .worse {
    color: var(--worse);
  }

  .visually-hidden:not(:focus-within):not(:active) {
    ${hiddenFromSight}
  }

  details > summary {
    cursor: pointer;
  }

  @media (forced-colors: active) {
    button.primary {
      background: ButtonFace;
      color: ButtonText;
    }
    button[aria-pressed="true"] {
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }
    input[type="range"]::-webkit-slider-runnable-track {
      background: CanvasText;
    }
  }
  /* What would only flash where it takes no time. */
  .late {
    animation: late 0.4s step-end backwards;
  }
  @keyframes late {
    from {
      visibility: hidden;
    }
  }
  /* What is computed anew: old figures fade, but not where the new ones come before the eye would notice. */
  .awaited[aria-busy="true"] {
    animation: awaited 0s 0.4s forwards;
  }
  @keyframes awaited {
    to {
      opacity: 0.55;
    }
  }
  .print-only {
    display: none;
  }
  @media print {
    .screen-only {
      display: none !important;
    }
    .print-only {
      display: inline;
    }
    /* Pages break between paragraphs and rows, never after a heading. */
    h2,
    h3,
    h4 {
      break-after: avoid;
    }
    tr,
    li,
    .caution {
      break-inside: avoid;
    }
    /* Paper does not scroll, and the ground of a head that stays in sight would cover the hairlines. */
    th {
      position: static !important;
      background: none !important;
    }
    p {
      orphans: 2;
      widows: 2;
    }
    .scroll {
      overflow: visible;
    }
  }
`;
