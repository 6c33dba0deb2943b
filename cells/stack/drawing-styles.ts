/** Type and colours of the cell's own drawings, high contrast included. */
import { css } from 'lit';

export const drawingStyles = css`
  :host {
    display: block;
    contain: layout style;
  }
  svg {
    display: block;
    max-width: 100%;
    height: auto;
    overflow: visible;
    font-family: var(--sans);
    font-size: 12px;
    font-variant-numeric: tabular-nums lining-nums;
  }
  text {
    fill: var(--ink-soft);
  }
  @media (forced-colors: active) {
    :host {
      --ink: CanvasText;
      --ink-soft: CanvasText;
      --ink-faint: CanvasText;
      --hairline: Canvas;
      --paper-raised: Canvas;
      --paper-sunk: Canvas;
      --accent: Highlight;
    }
  }
`;
