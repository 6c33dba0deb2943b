import { css } from 'lit';

export const ratingsStyles = css`
  .scroll {
    margin-bottom: var(--space-2);
  }
  th[scope="row"] {
    position: sticky;
    left: 0;
    background-color: var(--paper);
    min-width: 9rem;
  }
  th[scope="row"] button {
    min-height: 1.5rem;
    padding: 0;
    color: var(--ink);
    text-align: left;
    white-space: normal;
    text-decoration: underline dotted var(--hairline-strong);
    text-underline-offset: 0.22em;
  }
  th[scope="row"] button[aria-expanded="true"] {
    font-weight: 600;
    text-decoration-style: solid;
  }
  .group th {
    padding-top: var(--space-3);
    color: var(--ink-soft);
    font-size: var(--size-small);
    border-bottom-color: var(--hairline-strong);
  }
  .ratings {
    min-width: calc(9rem + 7rem * var(--columns));
    table-layout: fixed;
  }
  .ratings :is(th, td):last-child {
    padding-right: 0;
  }
  .ratings thead th:first-child {
    position: sticky;
    left: 0;
    background-color: var(--paper);
  }
  .group span {
    position: sticky;
    left: 0;
  }
  /* Samples in one line, however far the names below them run. */
  thead .number {
    vertical-align: top;
    white-space: normal;
  }
  thead .line-sample {
    display: block;
    margin: 0 0 var(--space-1) auto;
  }
  td.number {
    line-height: 1.3;
  }
  .difference {
    display: block;
    font-size: var(--size-small);
  }
  .neutral {
    color: var(--ink-soft);
  }
  [aria-busy="true"] .value {
    color: var(--ink-soft);
  }
  .story {
    margin: var(--space-2) 0 var(--space-4);
    padding: var(--space-3) var(--space-4);
    border-left: 2px solid var(--hairline-strong);
  }
  .story {
    scroll-margin-block: var(--space-4);
  }
  .story-head {
    display: flex;
    align-items: baseline;
    justify-content: space-between;
    gap: var(--space-3);
  }
  .counted {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-1) var(--space-3);
    margin-bottom: var(--space-2);
  }
  .counted .note {
    flex: 1 1 20rem;
    margin: 0;
  }
  .story p {
    max-width: var(--reading-width);
  }
  .story table {
    width: auto;
    font-size: var(--size-small);
  }
  .story :is(th, td) {
    padding-right: var(--space-2);
  }
  .story th[scope="row"] {
    min-width: 5.5rem;
  }
  .stress {
    color: var(--accent);
    font-weight: 600;
  }
  .note {
    max-width: var(--reading-width);
  }
  .failures {
    margin-top: var(--space-2);
  }
  /* Two whole columns at a time: a number cut by the names beside it would read as another. */
  .counted .sideways {
    display: none;
    flex-basis: 100%;
  }
  @media screen and (max-width: 40rem) {
    .counted .sideways {
      display: block;
    }
    .scroll:has(> .ratings) {
      container-type: inline-size;
      scroll-snap-type: x mandatory;
      scroll-padding-left: 6.5rem;
    }
    .ratings {
      min-width: calc(6.5rem + (100cqw - 6.5rem) / 2 * max(2, var(--columns)));
    }
    .ratings :is(th[scope="row"], thead th:first-child) {
      width: 6.5rem;
      min-width: 0;
    }
    .ratings thead th:not(:first-child) {
      scroll-snap-align: start;
    }
    /* The edge that tells of further columns fades beside the numbers, not over them. */
    .ratings :is(td, thead th):not(:first-child, :last-child) {
      padding-right: var(--space-5);
    }
  }
  @media print {
    .counted {
      break-after: avoid;
    }
    .ratings {
      break-inside: avoid;
      min-width: 0;
    }
    .ratings :is(th, td) {
      font-size: var(--size-small);
      overflow-wrap: anywhere;
    }
    .ratings th[scope="row"] {
      min-width: 0;
    }
    /* As high as its text, so that it shares the line of the numbers. */
    .ratings th[scope="row"] button {
      display: inline;
      min-height: 0;
      line-height: inherit;
    }
    .ratings .group {
      break-after: avoid;
    }
    /* Beside its number: half as many lines. */
    .difference {
      display: inline-block;
      min-width: 2.5em;
    }
    .ratings :is(td, tbody th) {
      padding-block: 0.15rem;
    }
    .story {
      break-inside: avoid;
    }
  }
`;
