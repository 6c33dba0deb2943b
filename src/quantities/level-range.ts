/** Measured levels outside are slips of the keyboard or another unit. Our own choice, no source. */
export const LEVEL_RANGE_dB = { low: -50, high: 200 } as const;
