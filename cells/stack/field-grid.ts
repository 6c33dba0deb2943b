import { css } from 'lit';

/** Fields beside each other, as many as fit; `wide` ones take two places. */
export const fieldGridStyles = css`
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr));
    gap: var(--space-2) var(--space-4);
    align-items: start;
  }
  .fields > * {
    min-width: 0;
  }
  .wide {
    grid-column: span 2;
  }
  .field input,
  .field select {
    width: 100%;
  }
  @media (max-width: 30rem) {
    .fields {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`;
