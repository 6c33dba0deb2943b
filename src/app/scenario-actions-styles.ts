import { css } from 'lit';

export const scenarioActionsStyles = css`
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .more {
    display: grid;
    /* As wide as the card, however long a word in the name. */
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-3);
    margin: var(--space-2) 0 var(--space-1);
    padding: var(--space-3) 0 var(--space-2);
    border-top: 1px dotted var(--hairline-strong);
  }
  .more button {
    white-space: normal;
    font-size: var(--size-small);
  }
  .more textarea.grown {
    width: 100%;
    margin: 0;
    border-color: var(--hairline-strong);
    background: var(--paper-raised);
    overflow-wrap: anywhere;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-2);
  }
  .change-list > li {
    padding: var(--space-1) 0;
    border-top: 1px dotted var(--hairline);
    font-size: var(--size-small);
  }
  .change-list .row {
    gap: 0;
    margin-left: calc(-1 * var(--space-2));
  }
  .all {
    justify-self: start;
    margin-left: calc(-1 * var(--space-2));
  }
`;
