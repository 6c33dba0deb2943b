import { css } from 'lit';

/** What only a listener is told: declarations to put into a rule. */
export const hiddenFromSight = css`
  position: absolute;
  width: 1px;
  height: 1px;
  margin: -1px;
  overflow: hidden;
  clip-path: inset(50%);
  white-space: nowrap;
`;
