import { css } from 'lit';

export const cellColumnStyles = css`
  /* A notebook opens from the top: nothing shows that what comes above it would push down. */
  .opening > cell-frame[pending] ~ * {
    visibility: hidden;
  }
  .place {
    display: flex;
    align-items: center;
    min-height: 3.5rem;
    max-width: var(--figure-width);
  }
  .place[data-place="0"] {
    min-height: 2rem;
    margin-top: calc(-1 * var(--space-2));
  }
  .place::after {
    content: "";
    flex: 1;
    height: 1px;
    background: transparent;
  }
  .place.drop::after {
    height: 3px;
    background: var(--focus);
  }
  .choose {
    max-width: var(--figure-width);
    margin-bottom: var(--space-5);
    padding: var(--space-3);
    border: 1px solid var(--hairline);
    border-radius: var(--radius);
    background: var(--paper-raised);
  }
  .choose > div {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr));
    gap: var(--space-2);
  }
  .choose button.kind {
    display: block;
    height: auto;
    padding: var(--space-2) var(--space-3);
    text-align: left;
    white-space: normal;
  }
  .kind b {
    display: block;
    font-weight: 600;
  }
  .choose p {
    display: flex;
    justify-content: space-between;
    align-items: center;
  }
  .empty {
    max-width: var(--reading-width);
    font-family: var(--text);
    font-size: var(--size-body);
    line-height: var(--leading);
  }
  @media print {
    .opening > cell-frame[pending] ~ * {
      visibility: visible;
    }
    .place {
      min-height: var(--space-4);
    }
  }
`;
