/** Level of the sum of energies, dB: 10 lg Σ 10^(L/10). No level at all gives −∞. */
export function energySum_dB(levels_dB: readonly number[]): number {
  return 10 * Math.log10(levels_dB.reduce((sum, level) => sum + 10 ** (level / 10), 0));
}

/** Level of the mean of energies, dB. No level at all gives NaN. */
export function energyMean_dB(levels_dB: readonly number[]): number {
  return energySum_dB(levels_dB) - 10 * Math.log10(levels_dB.length);
}
