import { css } from 'lit';

/** A table folded away under the ratings: a column per scenario, and what each row is where there is room for it. */
export const columnTableStyles = css`
  .note,
  .caution {
    max-width: var(--reading-width);
  }
  .scroll {
    margin-bottom: var(--space-3);
  }
  table {
    width: auto;
    min-width: calc(9rem + 6rem * var(--columns));
  }
  thead .number {
    vertical-align: top;
    white-space: normal;
    width: 6rem;
    min-width: 4.5rem;
  }
  thead .line-sample {
    display: block;
    margin: 0 0 var(--space-1) auto;
  }
  th[scope='row'] {
    min-width: 5.5rem;
  }
  .about {
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  @media screen and (max-width: 40rem) {
    table {
      min-width: calc(6.5rem + 6rem * var(--columns));
    }
    .about {
      display: none;
    }
  }
  @media print {
    .scroll {
      break-inside: avoid;
    }
    table {
      min-width: 0;
    }
    .about {
      white-space: normal;
    }
  }
`;
