import { css } from 'lit';

/** On wide pages a column beside the cells; on narrow ones a strip that scrolls sideways. */
export const scenarioRailStyles = css`
  h2 {
    margin-bottom: var(--space-2);
    font-family: var(--sans);
    font-size: var(--size-small);
    font-weight: 600;
    color: var(--ink-soft);
    letter-spacing: 0.02em;
  }
  ol {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  ol > li {
    position: relative;
    padding: var(--space-2) var(--space-2) var(--space-2) var(--space-3);
    border-top: 1px solid var(--hairline);
  }
  ol > li:last-child {
    border-bottom: 1px solid var(--hairline);
  }
  ol > li.active {
    background: var(--paper-raised);
  }
  ol > li.active::before {
    content: "";
    position: absolute;
    inset: -1px auto -1px 0;
    width: 3px;
    background: var(--ink);
  }
  ol > li.drop {
    box-shadow: 0 2px 0 var(--focus);
  }
  .top {
    display: flex;
    align-items: flex-start;
    gap: var(--space-2);
  }
  .pick {
    flex: 1;
    min-width: 0;
    cursor: pointer;
  }
  /* What stands beside the name stands beside its first line, 1.4 em high. */
  .top > label.pick {
    align-items: flex-start;
  }
  .pick input {
    flex: none;
    margin-top: calc(0.7em - 0.5rem);
  }
  .pick .line-sample {
    margin-top: calc(0.7em - 6px);
  }
  .top > .icon {
    margin-top: calc(0.7em - 0.9375rem);
  }
  .name {
    overflow-wrap: anywhere;
    font-weight: 600;
  }
  .not-shown :is(.name, .line-sample) {
    opacity: 0.75;
    font-weight: 400;
  }
  button[aria-pressed="true"].quiet {
    border-color: transparent;
    background: none;
    color: var(--ink-soft);
  }
  .words {
    margin: var(--space-1) 0 0 1.5rem;
    color: var(--ink-soft);
    font-size: var(--size-small);
    overflow-wrap: anywhere;
  }
  .reference {
    display: inline-block;
    margin-right: var(--space-1);
    padding: 0 0.4em;
    border: 1px solid var(--hairline-strong);
    border-radius: 1em;
    color: var(--ink);
    font-size: 0.75rem;
    line-height: 1.35;
  }
  .changes {
    color: var(--ink);
  }
  .actions {
    display: flex;
    gap: var(--space-1);
    margin-left: 1rem;
  }
  .actions button {
    min-height: 1.625rem;
    font-size: var(--size-small);
  }
  /* Where a single card fits beside the next, their names say who else is there. */
  .names {
    display: none;
    flex-wrap: wrap;
    gap: 0 var(--space-3);
    color: var(--ink-soft);
    font-size: var(--size-small);
    line-height: 1.5;
  }
  .names span {
    display: inline-flex;
    align-items: flex-start;
    gap: var(--space-1);
    padding: 0.2rem 0;
    overflow-wrap: anywhere;
    cursor: pointer;
  }
  .names .line-sample {
    margin-top: calc(0.75em - 6px);
  }
  .names .working {
    color: var(--ink);
    font-weight: 600;
  }
  @media (max-width: 40rem) {
    .names {
      display: flex;
    }
  }
  @media (max-width: 74.99rem) {
    ol {
      display: grid;
      grid-auto-flow: column;
      grid-auto-columns: minmax(14rem, 17rem);
      overflow-x: auto;
      scroll-snap-type: x proximity;
      /* What is left in sight of the card before the one that is scrolled to; the edge fades over it. */
      scroll-padding-left: 24px;
      border-block: 1px solid var(--hairline);
    }
    ol > li {
      scroll-snap-align: start;
      border: 0;
      border-right: 1px solid var(--hairline);
    }
    ol > li:last-child {
      border-bottom: 0;
    }
    ol > li.active::before {
      inset: 0 0 auto 0;
      width: auto;
      height: 3px;
    }
    ol > li.drop {
      box-shadow: 2px 0 0 var(--focus);
    }
  }
  @media (forced-colors: active) {
    ol > li.active::before {
      background: Highlight;
    }
  }
  @media print {
    ol {
      display: grid;
      grid-auto-flow: row;
      grid-template-columns: repeat(2, minmax(0, 1fr));
      border-block: 0;
      gap: 0 var(--space-4);
      overflow: visible;
    }
    .actions,
    scenario-actions,
    .pick input,
    .top > button,
    .not-shown {
      display: none !important;
    }
    ol > li,
    ol > li.active::before {
      border: 0;
      background: none;
    }
  }
`;
