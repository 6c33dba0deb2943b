import { css } from 'lit';
import { hiddenFromSight } from './hidden-from-sight.ts';

export const chartStyles = css`
  :host {
    display: block;
    contain: layout style;
    font-family: var(--sans);
    font-size: var(--size-ui);
    color: var(--ink);
    font-variant-numeric: tabular-nums lining-nums;
  }
  figure {
    margin: 0;
  }
  .picture {
    position: relative;
    min-height: 14rem;
  }
  .picture > svg {
    display: block;
    max-width: 100%;
    height: auto;
    --plot-background: var(--paper);
  }
  .live {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    pointer-events: none;
  }
  .live .pinned {
    stroke: var(--ink-soft);
    stroke-width: 1;
  }
  .live .pointer {
    stroke: var(--accent);
    stroke-width: 1;
  }
  .live circle {
    fill: var(--paper);
    stroke-width: 2;
  }
  .live text {
    font-size: 12px;
    fill: var(--ink);
    font-weight: 600;
    text-anchor: middle;
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 5px;
    stroke-linejoin: round;
  }
  .live .lit-region {
    fill: var(--accent);
    fill-opacity: 0.2;
    stroke: var(--accent);
  }
  .reach {
    position: absolute;
    inset: 0;
    cursor: crosshair;
    touch-action: pan-y;
  }
  .reach:focus-visible {
    outline: 2px solid var(--focus);
    outline-offset: 2px;
  }
  .value-label,
  .axis-label {
    position: absolute;
    font-size: var(--size-small);
    color: var(--ink-soft);
    pointer-events: none;
  }
  .value-label {
    top: 0;
    left: 0;
  }
  .axis-label {
    bottom: 0;
  }
  .picture[aria-busy="true"] > svg:first-child {
    animation: wait 0s 0.4s forwards;
  }
  @keyframes wait {
    to {
      opacity: 0.55;
    }
  }

  .key {
    width: 100%;
    max-width: var(--reading-width);
    margin: var(--space-2) 0 0;
    border-collapse: collapse;
    line-height: 1.35;
  }
  .key th,
  .key td {
    padding: 0.2rem var(--space-3) 0.2rem 0;
    border: 0;
    text-align: left;
    font-weight: 400;
    vertical-align: top;
  }
  .key thead th {
    font-size: var(--size-small);
    color: var(--ink-soft);
    white-space: nowrap;
    vertical-align: bottom;
  }
  .key tbody tr:first-child > * {
    border-top: 1px solid var(--hairline);
  }
  .key .level {
    width: 5.5rem;
    padding-right: 0;
    text-align: right;
    white-space: nowrap;
  }
  .key [data-idle] {
    visibility: hidden;
  }
  .key .name {
    display: flex;
    gap: var(--space-2);
    overflow-wrap: anywhere;
  }
  .key .line-sample {
    margin-top: 0.25em;
  }
  .key .remark {
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  .visually-hidden {
    ${hiddenFromSight}
  }

  @media (forced-colors: active) {
    :host {
      --paper: Canvas;
      --ink: CanvasText;
      --ink-soft: CanvasText;
      --hairline: GrayText;
      --hairline-strong: CanvasText;
      --accent: Highlight;
      --scenario-1: CanvasText;
      --scenario-2: CanvasText;
      --scenario-3: CanvasText;
      --scenario-4: CanvasText;
      --scenario-5: CanvasText;
      --scenario-6: CanvasText;
      --scenario-7: CanvasText;
      --scenario-8: CanvasText;
    }
  }
  @media print {
    /* Else no page may end between picture and key. */
    :host {
      contain: none;
    }
    .picture {
      break-inside: avoid;
    }
    .key {
      break-before: avoid;
    }
    .key tr {
      break-inside: avoid;
    }
    /* Neither its head nor a single row alone on a page. */
    .key :is(thead tr, tbody tr:nth-child(-n + 2)) {
      break-after: avoid;
    }
    .key tbody tr:last-child {
      break-before: avoid;
    }
  }
`;
