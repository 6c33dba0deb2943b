/** How cells look that hold a picture: choices above it, tools and a table below, and a frame where it is missing. */
import { css } from 'lit';

export const pictureCellStyles = css`
  .choices {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2) var(--space-5);
    margin-bottom: var(--space-4);
  }
  .empty {
    padding: var(--space-6) var(--space-4);
    border: 1px dashed var(--hairline-strong);
    border-radius: var(--radius);
    color: var(--ink-soft);
    text-align: center;
  }
  .tools {
    margin: var(--space-2) 0 0 calc(-1 * var(--space-2));
    font-size: var(--size-small);
  }
  table.bands {
    width: auto;
    margin-top: var(--space-3);
    font-size: var(--size-small);
  }
  table.bands th:first-child {
    position: sticky;
    left: 0;
    background-color: var(--paper);
  }
  table.bands thead th {
    min-width: 5.5rem;
    max-width: 11rem;
    white-space: normal;
  }
  @media print {
    /* Not a single row at the foot of a page. */
    table.bands tbody tr:nth-child(-n + 4) {
      break-after: avoid;
    }
  }
`;
