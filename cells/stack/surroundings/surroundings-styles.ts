import { css } from 'lit';
import { fieldGridStyles } from '../field-grid.ts';

export const surroundingsStyles = css`
  ${fieldGridStyles}
  ul {
    margin: 0 0 var(--space-3);
    padding: 0;
    list-style: none;
  }
  li {
    padding: var(--space-3) 0;
    border-top: 1px solid var(--hairline);
  }
  .head {
    display: flex;
    align-items: center;
    gap: 0 var(--space-3);
    margin-bottom: var(--space-2);
  }
  .name {
    flex: 0 1 18rem;
    min-width: 8rem;
    font-weight: 600;
  }
  .kind {
    flex: 1;
  }
  .add {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-2);
    margin-bottom: var(--space-3);
  }
  .note,
  .caution {
    max-width: var(--reading-width);
  }
  .fields + .note {
    margin: var(--space-2) 0 0;
  }
  @media (max-width: 30rem) {
    .head {
      flex-wrap: wrap;
    }
    .name {
      flex: 1;
    }
    .kind {
      flex: 1 0 100%;
      order: 1;
    }
  }
`;
