import { css } from 'lit';

export const commentaryStyles = css`
  .page {
    max-width: var(--reading-width);
    font-family: var(--text);
    font-size: var(--size-body);
    line-height: var(--leading);
    overflow-wrap: break-word;
    hanging-punctuation: first;
  }
  .page :is(p, ul, ol, pre, blockquote, details) {
    margin: 0 0 0.75em;
  }
  .page > div > :last-child {
    margin-bottom: 0;
  }
  .page :is(h2, h3, h4, h5, h6) {
    margin: 1.25em 0 0.4em;
    font-family: var(--text);
    font-weight: 600;
    line-height: 1.25;
  }
  .page > div > :first-child {
    margin-top: 0;
  }
  .page :is(h4, h5, h6) {
    font-size: 1em;
  }
  .page :is(ul, ol) {
    padding-left: 1.4em;
  }
  .page li + li {
    margin-top: 0.2em;
  }
  .page a {
    color: var(--accent);
    text-underline-offset: 0.15em;
  }
  .page code {
    font-size: 0.9em;
  }
  .page pre {
    padding: var(--space-3);
    overflow-x: auto;
    background: var(--paper-sunk);
    white-space: pre-wrap;
  }
  .page blockquote {
    padding-left: var(--space-4);
    border-left: 2px solid var(--hairline-strong);
    color: var(--ink-soft);
  }
  .page hr {
    border: 0;
    border-top: 1px solid var(--hairline-strong);
  }
  .page details {
    padding: var(--space-2) var(--space-4);
    border: 1px solid var(--hairline);
    border-radius: var(--radius);
  }
  .page summary {
    margin-left: calc(-1 * var(--space-1));
    font-family: var(--sans);
    font-size: var(--size-ui);
    color: var(--accent);
  }
  .page details[open] summary {
    margin-bottom: var(--space-2);
  }
  .page .note,
  .page .error {
    font-family: var(--sans);
  }

  .live {
    font-feature-settings: "tnum", "lnum";
    font-weight: 600;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-decoration-color: var(--hairline-strong);
    text-underline-offset: 0.22em;
    white-space: nowrap;
  }
  .live.computing {
    text-decoration-style: dotted;
    color: var(--ink-soft);
  }
  .live.missing {
    font-weight: 400;
    color: var(--error-ink);
    white-space: normal;
    text-decoration-style: wavy;
    text-decoration-color: var(--error-ink);
  }
  .formula {
    display: inline-block;
    max-width: 100%;
    overflow-x: auto;
    vertical-align: middle;
  }
  p:has(> .formula:only-child) {
    display: block;
    padding: var(--space-1) 0;
  }
  math {
    font-size: 1.1em;
  }

  .editor {
    margin-bottom: var(--space-4);
  }
  .editor textarea {
    display: block;
    width: 100%;
    min-height: 9rem;
    field-sizing: content;
    font-family: ui-monospace, "Cascadia Mono", "DejaVu Sans Mono", monospace;
    font-size: var(--size-ui);
    line-height: 1.5;
  }
  .done {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2) var(--space-3);
    margin-top: var(--space-2);
  }
  .tools {
    margin: var(--space-1) 0 0 calc(-1 * var(--space-2));
  }
  .tools button {
    opacity: 0;
    font-size: var(--size-small);
  }
  :host(:hover) .tools button,
  .tools button:focus-visible {
    opacity: 1;
  }
  @media (hover: none) {
    .tools button {
      opacity: 1;
    }
  }
  /* Paper cannot be unfolded, and a question loses its point beside its answer: what the reader left folded stays so. */
  @media print {
    .page details:not([open]) summary::after {
      content: " (answer folded)";
      color: var(--ink-soft);
    }
    /* A list stays with its heading: none leaves a single point for the next page. */
    .page :is(ul, ol, details) {
      break-inside: avoid;
    }
    /* Nor does a question lose its answer, or a list the words before it. */
    .page :has(+ :is(ul, ol, details)) {
      break-after: avoid;
    }
  }
`;
