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
  /*
   * What is off screen is neither laid out nor painted once its height is known and remembered; before that there are
   * guesses.
   */
  .body {
    margin: -0.5rem -0.75rem;
    padding: 0.5rem 0.75rem;
    contain-intrinsic-height: auto 36rem;
  }
  :host([pending]) .body {
    min-height: 36rem;
  }
  :host([pending][kind="commentary"]) .body {
    min-height: 12rem;
  }
  :host([measured]) .body {
    content-visibility: auto;
  }
  .loading {
    visibility: hidden;
    animation: wait 0s 0.4s forwards;
  }
  @keyframes wait {
    to {
      visibility: visible;
    }
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
    :host([measured]) .body {
      content-visibility: visible;
    }
    :host([pending]) .body {
      min-height: 0;
    }
  }
`;
