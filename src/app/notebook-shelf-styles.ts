import { css } from 'lit';

export const notebookShelfStyles = css`
  dialog {
    width: min(46rem, calc(100vw - 2rem));
    max-height: calc(100vh - 4rem);
    padding: var(--space-5);
    border: 1px solid var(--hairline-strong);
    border-radius: var(--radius);
    background: var(--paper);
    color: var(--ink);
  }
  dialog::backdrop {
    background: rgb(0 0 0 / 35%);
  }
  .head {
    display: flex;
    justify-content: space-between;
    align-items: center;
    margin-bottom: var(--space-3);
  }
  h3 {
    margin: var(--space-5) 0 var(--space-2);
    font-family: var(--sans);
    font-size: var(--size-small);
    color: var(--ink-soft);
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-1) var(--space-2);
    padding: var(--space-2) 0;
    border-top: 1px solid var(--hairline);
  }
  .what {
    flex: 1 1 14rem;
    min-width: 0;
    overflow-wrap: anywhere;
  }
  .what p {
    margin: 0;
  }
  .title {
    min-height: 1.5rem;
    padding: 0;
    border: 0;
    background: none;
    font-family: var(--text);
    font-size: var(--size-body);
    font-weight: 600;
    text-align: left;
    white-space: normal;
  }
  .title:hover:not(:disabled) {
    background: none;
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
  .which {
    color: var(--ink-soft);
    font-weight: 400;
    font-variant-numeric: tabular-nums;
    white-space: nowrap;
  }
  .title:disabled {
    color: var(--ink);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-2);
  }
`;
