import { css } from 'lit';

export const layerListStyles = css`
  ol,
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .floor,
  .layer {
    padding: var(--space-3) var(--space-3) var(--space-4);
    border-top: 1px solid var(--hairline);
  }
  .layer.lit,
  .sheet.lit {
    background: var(--paper-sunk);
    box-shadow: inset 3px 0 0 var(--accent);
  }
  .layer.drop {
    outline: 2px solid var(--focus);
  }
  .layer:not(.leaf) {
    padding-left: var(--space-6);
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 var(--space-3);
    margin-bottom: var(--space-2);
  }
  .name {
    flex: 1 1 9rem;
    max-width: 18rem;
    font-weight: 600;
  }
  .kind {
    flex: 1;
    white-space: nowrap;
  }
  .stack-name {
    display: flex;
    align-items: baseline;
    gap: var(--space-4);
    max-width: 30rem;
    margin-bottom: var(--space-2);
    font-weight: 600;
  }
  .moves {
    padding: 0 var(--space-3);
  }
  .absence {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    margin: calc(-1 * var(--space-2)) 0 var(--space-2);
  }
  .absence button {
    height: auto;
    white-space: normal;
    text-align: left;
  }
  .grip {
    display: inline-flex;
    color: var(--ink-faint);
    cursor: grab;
  }
  .grip svg,
  pop-menu svg {
    width: 1em;
    height: 1em;
    fill: none;
    stroke: currentColor;
    stroke-width: 2;
    stroke-linecap: round;
  }
  .actions {
    display: flex;
    flex: none;
  }
  .add {
    white-space: nowrap;
  }
  .product {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 var(--space-3);
    margin-top: var(--space-2);
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr));
    gap: var(--space-2) var(--space-4);
    align-items: start;
  }
  .material,
  .support,
  .fill,
  .joists,
  .covering,
  .contact {
    grid-column: span 2;
  }
  .mat-source {
    grid-column: 1 / -1;
    max-width: 30rem;
  }
  .mat-source input {
    width: 100%;
  }
  .sheet {
    display: flex;
    flex-wrap: wrap;
    align-items: flex-start;
    gap: var(--space-2);
    padding: var(--space-2);
    margin: 0 calc(-1 * var(--space-2));
  }
  .sheet .fields {
    flex: 1 1 18rem;
  }
  /* As wide with buttons as without them, so that the fields of all sheets stand under each other. */
  .sheet .actions {
    justify-content: flex-end;
    width: 6.5rem;
    padding-top: 1.5rem;
  }
  details {
    margin-top: var(--space-3);
  }
  .fields + .note {
    margin-top: var(--space-2);
  }
  summary {
    color: var(--ink-soft);
    font-size: var(--size-small);
    margin-bottom: var(--space-2);
  }
  @media (max-width: 30rem) {
    .fields {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .layer:not(.leaf) {
      padding-left: var(--space-5);
    }
    .sheet .actions {
      justify-content: flex-start;
      padding-top: 0;
    }
    .sheet .actions:empty {
      display: none;
    }
  }
`;
