import { css } from 'lit';

export const appStyles = css`
  :host {
    min-height: 100vh;
    background: var(--paper);
  }
  .page {
    max-width: 84rem;
    margin: 0 auto;
    padding: 0 var(--space-5) var(--space-7);
  }
  .columns {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-4);
  }
  scenario-rail {
    min-width: 0;
  }
  .banner {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2) var(--space-3);
    margin-bottom: var(--space-4);
  }
  .banner p {
    flex: 1 1 20rem;
    margin: 0;
  }
  .skip {
    position: absolute;
    top: var(--space-2);
    left: var(--space-2);
    z-index: 30;
  }
  .skip:not(:focus) {
    transform: translateY(-200%);
  }
  .file-over {
    position: fixed;
    inset: var(--space-4);
    z-index: 30;
    display: grid;
    place-items: center;
    border: 2px dashed var(--focus);
    border-radius: var(--radius);
    background: color-mix(in srgb, var(--paper) 85%, transparent);
    font-family: var(--text);
    font-size: var(--size-h2);
    pointer-events: none;
  }
  .starting {
    min-height: 60vh;
    padding-top: var(--space-6);
    color: var(--ink-soft);
  }
  .cautions {
    max-width: var(--reading-width);
    margin-top: var(--space-6);
    padding-top: var(--space-4);
    border-top: 1px solid var(--hairline);
    color: var(--ink-soft);
    font-size: var(--size-small);
  }
  @media (min-width: 75rem) {
    .columns {
      grid-template-columns: 17rem minmax(0, 1fr);
      gap: var(--space-6);
    }
    scenario-rail {
      position: sticky;
      top: var(--space-4);
      align-self: start;
      max-height: calc(100vh - 2 * var(--space-4));
      overflow-y: auto;
      scrollbar-width: thin;
    }
  }
  @media (max-width: 40rem) {
    .page {
      padding-inline: var(--space-4);
    }
  }
  @media print {
    .page {
      max-width: none;
      padding: 0;
    }
    .columns {
      display: block;
    }
    .cautions {
      margin-top: var(--space-4);
      break-inside: avoid;
    }
    scenario-rail {
      position: static;
      max-height: none;
      overflow: visible;
    }
  }
`;
