import { css } from 'lit';

/** One row per parameter: the control of the active scenario first, then a narrow column per shown scenario. */
export const parametersStyles = css`
  .rows {
    display: grid;
    grid-template-columns: minmax(16rem, 1fr) repeat(var(--columns), minmax(3.75rem, 7.5rem));
    column-gap: var(--space-3);
  }
  /* What is worked with stays, the columns of the scenarios go past it. */
  .crowded {
    position: relative;
    overflow-x: auto;
    padding-inline: 3px;
  }
  .crowded :is(.control, .heads .working) {
    position: sticky;
    left: 0;
    background: var(--paper);
  }
  .heads,
  .row {
    display: grid;
    grid-column: 1 / -1;
    grid-template-columns: subgrid;
    align-items: start;
    padding: var(--space-3) 0;
    border-bottom: 1px solid var(--hairline);
  }
  .heads {
    padding: 0 0 var(--space-2);
    border-bottom-color: var(--hairline-strong);
    color: var(--ink-soft);
    font-size: var(--size-small);
    line-height: 1.25;
  }
  .row:last-of-type {
    border-bottom: 0;
  }
  .heads .scenario {
    display: grid;
    justify-items: end;
    gap: var(--space-1);
    text-align: right;
    overflow-wrap: anywhere;
  }
  .heads .working {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-1) var(--space-2);
  }
  .heads .working b {
    color: var(--ink);
    font-weight: 600;
  }

  .control {
    display: grid;
    gap: var(--space-1);
  }
  .label {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    gap: 0 var(--space-3);
  }
  .label > :first-child {
    font-weight: 600;
  }
  button.use {
    min-height: 1.5rem;
    padding: 0;
    color: var(--ink-soft);
    font-size: var(--size-small);
    text-decoration: underline dotted;
    text-underline-offset: 0.2em;
    white-space: normal;
    text-align: left;
  }
  .entry {
    display: flex;
    align-items: center;
    gap: var(--space-3);
  }
  .entry input[type="text"] {
    flex: none;
    width: 7.5rem;
    text-align: right;
  }
  .changed {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 var(--space-2);
    margin: 0;
  }
  .changed button {
    min-height: 1.5rem;
    font-size: var(--size-small);
  }

  .values {
    display: contents;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .values li {
    padding-top: 0.1rem;
    text-align: right;
    overflow-wrap: anywhere;
    color: var(--ink-soft);
  }
  .values .line-sample {
    display: none;
  }
  .values .own {
    color: var(--ink);
    font-weight: 600;
  }
  .values .mark {
    display: block;
    font-size: var(--size-small);
    font-weight: 400;
    line-height: 1.25;
    text-wrap: balance;
    color: var(--accent);
  }

  /* In sight as long as the sliders are, without hiding what has the focus. */
  floor-answer {
    position: sticky;
    bottom: 0;
    z-index: 1;
  }
  .rows :is(input, select, button) {
    scroll-margin-bottom: 9rem;
  }
  /* In a window as low as this, as when the page is much enlarged, it would leave the sliders no room. */
  @media (max-height: 22rem) {
    floor-answer {
      position: static;
    }
  }

  @container (max-width: 40rem) {
    .rows,
    .row {
      display: block;
    }
    .heads .scenario {
      display: none;
    }
    .values {
      display: flex;
      flex-wrap: wrap;
      gap: var(--space-1) var(--space-4);
      margin-top: var(--space-2);
      font-size: var(--size-small);
    }
    .values li {
      display: inline-flex;
      align-items: flex-start;
      gap: var(--space-2);
      text-align: left;
    }
    .values .line-sample {
      display: inline-block;
      margin-top: calc(0.7em - 6px);
    }
    /* The value in one line; what it was changed from gets the room that is left. */
    .values .value {
      flex: none;
    }
    .values .own .value {
      max-width: 60%;
    }
    .values .mark {
      flex: 1;
      line-height: inherit;
    }
  }
  @media print {
    .crowded {
      overflow-x: visible;
    }
  }
  .host {
    container-type: inline-size;
  }
  @media print {
    .print-only {
      font-weight: 400;
    }
    /* Its heads name the columns. */
    .rows {
      break-inside: avoid;
    }
    .row {
      padding: var(--space-1) 0;
    }
    /* The list of scenarios says it already. */
    .values .mark {
      display: none;
    }
    .entry,
    .control > :is(fieldset, select),
    button.use,
    .changed button {
      display: none;
    }
  }
`;
