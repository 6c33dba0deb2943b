import { css } from 'lit';

/** The choices over and under the picture, and what stands below it. */
export const curvesStyles = css`
  .overlays {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-1) var(--space-4);
    margin: var(--space-3) 0 0;
    padding: 0;
    border: 0;
    font-size: var(--size-small);
    color: var(--ink-soft);
  }
  .overlays legend {
    float: left;
    padding: 0;
    line-height: 1.5rem;
  }
  /* Their words stand as far apart as the other choices, and in line with them where the row wraps. */
  .overlays button.quiet {
    margin-inline: calc(-1 * var(--space-2));
  }
  .low {
    font-size: var(--size-small);
    color: var(--ink-soft);
  }
  .dropping {
    outline: 2px dashed var(--focus);
    outline-offset: 4px;
  }
  table.measured-ratings {
    width: auto;
    font-size: var(--size-small);
  }
  table.measured-ratings th[scope="row"] {
    min-width: 7rem;
    overflow-wrap: anywhere;
  }
  .remark {
    margin-top: var(--space-2);
    overflow-wrap: anywhere;
  }
`;
