/**
 * How big a notebook may be. Far above what a page can show, low enough that a stranger's file cannot harm; our own
 * choice, no source.
 */
export const LIMITS = {
  /** Size of a file, bytes; the text may not be longer in characters either. */
  fileBytes: 2_000_000,
  /** Nesting of lists and objects; a notebook needs 8. */
  depth: 16,
  /** Entries of any one list or object. */
  entries: 1000,
  parameters: 200,
  choices: 100,
  stacks: 50,
  layers: 21,
  sheets: 12,
  leaks: 50,
  walls: 50,
  materials: 200,
  /** Sets of measured bands in one cell. */
  measured: 12,
  cells: 500,
  scenarios: 200,
  /** Characters. */
  name: 200,
  key: 64,
  source: 1000,
  commentary: 50_000,
  /** Problems listed; what goes beyond is counted. */
  problems: 500,
} as const;
