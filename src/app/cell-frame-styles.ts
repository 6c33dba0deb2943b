import { css } from 'lit';

export const cellFrameStyles = css`
  :host {
    max-width: var(--figure-width);
  }
  :host([kind="commentary"]) {
    max-width: var(--reading-width);
  }
  header {
    display: flex;
    align-items: flex-start;
    gap: var(--space-2);
    margin-bottom: var(--space-3);
  }
  header.bare {
    position: absolute;
    inset: calc(-1 * var(--space-5)) 0 auto auto;
    z-index: 1;
    margin: 0;
    background: var(--paper);
  }
  section {
    position: relative;
  }
  .title {
    flex: 1;
    min-width: 0;
  }
  .actions {
    display: flex;
    flex: none;
    font-size: var(--size-small);
  }
  .grip {
    display: grid;
    place-items: center;
    width: 1.875rem;
    color: var(--ink-soft);
    cursor: grab;
    touch-action: none;
  }
  @media (max-width: 40rem) {
    /* The actions stand in the gap above the cell, whether it has a title or not. */
    header.bare {
      inset: 0 0 auto auto;
    }
    .actions {
      position: absolute;
      inset: -2rem 0 auto auto;
    }
  }
  /* What is off screen is neither laid out nor painted; the sizes are guesses until it was seen once. */
  .body {
    content-visibility: auto;
    contain-intrinsic-height: auto 36rem;
    margin: -0.5rem;
    padding: 0.5rem;
  }
  :host([kind="commentary"]) .body {
    contain-intrinsic-height: auto 12rem;
  }
  .seen-title {
    font-size: var(--size-h2);
  }
  .failed {
    padding: var(--space-3);
    border: 1px dashed var(--error-ink);
    border-radius: var(--radius);
  }
  @media print {
    .actions {
      display: none !important;
    }
    header {
      break-after: avoid;
      break-inside: avoid;
    }
    .body {
      content-visibility: visible;
    }
  }
`;
