import { css } from 'lit';

export const pageHeaderStyles = css`
  .bar {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-1) var(--space-2);
    min-height: 3rem;
    border-bottom: 1px solid var(--hairline);
  }
  .mark {
    display: inline-flex;
    align-items: center;
    gap: var(--space-2);
    margin-right: var(--space-3);
    font-family: var(--text);
    font-weight: 600;
    white-space: nowrap;
  }
  .mark svg {
    width: 1.375rem;
    height: 1.375rem;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.5;
  }
  .gap {
    flex: 1;
  }
  @media (max-width: 40rem) {
    .bar {
      padding: var(--space-1) 0;
    }
    .mark {
      order: -2;
    }
    .gap {
      order: -2;
    }
    .bar button.icon {
      order: -1;
    }
    .bar > button:first-of-type {
      margin-left: calc(-1 * var(--space-2));
    }
  }
  :is(h1, .seen-title) {
    max-width: var(--figure-width);
    margin: var(--space-5) 0 var(--space-1);
    font-family: var(--text);
    font-size: var(--size-h1);
    font-weight: 600;
    line-height: 1.15;
    letter-spacing: -0.01em;
    text-wrap: balance;
  }
  .under {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2) var(--space-4);
    margin-bottom: var(--space-4);
  }
  .under p {
    margin: 0;
  }
  input[type="file"] {
    display: none;
  }
  @media print {
    .bar,
    .under {
      display: none;
    }
    h1 {
      margin-top: 0;
    }
  }
`;
