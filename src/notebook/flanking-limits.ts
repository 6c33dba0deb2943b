import type { FlankingLimit } from '#src/acoustics/construction.ts';

/**
 * The named limits: how much the walls beside the floor let around it. Assumed values, not measured ones: R at 500 Hz
 * and +3 dB per octave; say so wherever they are shown.
 */
export const NAMED_FLANKING: Readonly<Record<'well isolated' | 'ordinary' | 'weak', FlankingLimit>> = {
  'well isolated': { R500_dB: 68, slope_dB_per_octave: 3 },
  ordinary: { R500_dB: 58, slope_dB_per_octave: 3 },
  weak: { R500_dB: 50, slope_dB_per_octave: 3 },
};
