/** What the ends and the step of a parameter's range are called, on the page and in what is said of a file. */
export const RANGE_WORDS = { min: 'from', max: 'to', step: 'step' } as const;
