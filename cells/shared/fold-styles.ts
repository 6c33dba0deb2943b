import { css } from 'lit';

/** A part of a cell that is folded away: under a hairline, and not on paper unless it is open. */
export const foldStyles = css`
  details {
    margin-top: var(--space-3);
    padding-top: var(--space-2);
    border-top: 1px solid var(--hairline);
  }
  summary {
    padding: var(--space-1) 0;
    color: var(--ink-soft);
  }
  @media print {
    details:not([open]) {
      display: none;
    }
    summary {
      break-after: avoid;
    }
  }
`;
