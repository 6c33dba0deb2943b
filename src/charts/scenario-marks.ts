/**
 * How a scenario is told apart everywhere: colour, dash and marker together, so that no two depend on colour alone.
 *
 * Colours are custom properties (`src/app/tokens.css`), from the colour-blind-safe schemes 'muted' (on paper) and
 * 'light' (at night) of P. Tol, "Colour Schemes", SRON/EPS/TN/09-002 issue 3.2, 2021; the first is the ink itself.
 */
export interface ScenarioMark {
  readonly color: string;
  /** SVG stroke-dasharray, '' for a full line. */
  readonly dash: string;
  readonly marker: 'circle' | 'square' | 'triangle' | 'diamond' | 'cross' | 'star' | 'wye' | 'plus';
}

const DASHES = ['', '7 3', '2 2.5', '9 3 2 3', '12 4', '4 2', '9 2 2 2 2 2', '1 3'] as const;
const MARKERS = ['circle', 'square', 'triangle', 'diamond', 'cross', 'star', 'wye', 'plus'] as const;

export const SCENARIO_MARK_COUNT = MARKERS.length;

/** How the mark of this number, `mark` of a scenario, is drawn. */
export function scenarioMark(mark: number): ScenarioMark {
  const color = mark % SCENARIO_MARK_COUNT;
  // From the ninth on colours come again, with other dashes and markers: no two of 64 scenarios look alike.
  const round = Math.floor(mark / SCENARIO_MARK_COUNT);
  const dash = (color + 3 * round) % SCENARIO_MARK_COUNT;
  const marker = (color + 5 * round) % SCENARIO_MARK_COUNT;
  return { color: `var(--scenario-${color + 1})`, dash: DASHES[dash]!, marker: MARKERS[marker]! };
}
