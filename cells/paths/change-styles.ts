import { css } from 'lit';

/**
 * The two hues are blue and vermilion of the colour-blind-safe palette by Okabe and Ito (2008), mixed into the paper so
 * far that the ink on them keeps its contrast.
 */
export const changeStyles = css`
  :host {
    --quieter: #0072b2;
    --louder: #d55e00;
    --most: 52%;
  }
  .note {
    max-width: var(--reading-width);
    margin-top: var(--space-2);
  }
  .sample {
    display: inline-block;
    padding: 0 0.4em;
    border-radius: var(--radius);
    color: var(--ink);
  }
  .status {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-1) var(--space-3);
    min-height: 1.875rem;
    margin-bottom: var(--space-2);
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  progress {
    width: 8rem;
    height: 0.375rem;
    border: 0;
    border-radius: var(--radius);
    background: var(--hairline);
    appearance: none;
  }
  progress::-webkit-progress-bar {
    border-radius: inherit;
    background: var(--hairline);
  }
  progress::-webkit-progress-value {
    border-radius: inherit;
    background: var(--accent);
  }
  progress::-moz-progress-bar {
    border-radius: inherit;
    background: var(--accent);
  }
  .scroll {
    /* What is hidden from sight in it scrolls with it. */
    position: relative;
  }
  table {
    width: auto;
    font-size: var(--size-small);
    /* Hairlines of the cells' own: what stays in sight would cover shared ones. */
    border-collapse: separate;
    border-spacing: 0;
  }
  th,
  td {
    padding: 0.25rem 0.2rem;
    white-space: nowrap;
    vertical-align: middle;
  }
  thead th {
    white-space: normal;
  }
  th:first-child {
    position: sticky;
    left: 0;
    z-index: 1;
    width: 14.5rem;
    min-width: 14.5rem;
    padding-left: 0;
    line-height: 1.25;
    background-color: var(--paper);
    white-space: normal;
  }
  .about {
    display: block;
    color: var(--ink-soft);
  }
  .effect {
    min-width: 2.05rem;
    border-left: 1px solid var(--paper);
  }
  .effect,
  .sample {
    background: color-mix(in srgb, var(--hue, transparent) calc(var(--share, 0) * var(--most)), var(--paper));
  }
  .up {
    --hue: var(--quieter);
  }
  .down {
    --hue: var(--louder);
  }
  .nothing {
    color: var(--ink-faint);
  }
  tbody tr:last-child > * {
    border-bottom-color: var(--hairline-strong);
  }
  .row {
    margin: var(--space-2) 0 0 calc(-1 * var(--space-2));
  }
  .empty {
    padding: var(--space-5) var(--space-4);
    border: 1px dashed var(--hairline-strong);
    border-radius: var(--radius);
    color: var(--ink-soft);
    text-align: center;
  }
  .status.empty {
    justify-content: center;
    margin: 0;
    font-size: inherit;
  }
  @media (max-width: 40rem) {
    th:first-child {
      width: 8.5rem;
      min-width: 8.5rem;
      overflow-wrap: anywhere;
      hyphens: auto;
    }
  }
  @media screen and (prefers-color-scheme: dark) {
    :host {
      --quieter: #56b4e9;
      --louder: #e8833a;
      --most: 42%;
    }
  }
  @media print {
    .scroll {
      overflow: visible;
    }
    table,
    thead th {
      font-size: 6.5pt;
    }
    th,
    td {
      padding: 0.1rem 0.08rem;
    }
    th:first-child {
      width: 7.5rem;
      min-width: 7.5rem;
    }
    table {
      width: 100%;
    }
    .effect {
      min-width: 0;
    }
    .effect,
    .sample {
      print-color-adjust: exact;
    }
  }
`;
