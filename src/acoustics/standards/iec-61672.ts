/**
 * IEC 61672-1:2013, frequency weighting A: formula E.6 and its pole frequencies (Annex E); table 3 rounds the formula at
 * the exact base-ten mid-bands to 0.1 dB. Partly seen in a published copy, the rest from memory.
 */
const F1_HZ = 20.598997;
const F2_HZ = 107.65265;
const F3_HZ = 737.86223;
const F4_HZ = 12194.217;

const GAIN_AT_1000_DB = gain_dB(1000);

/**
 * A-weighting at a frequency, dB re 1 kHz.
 *
 * Valid 10 Hz to 20 kHz; outside it extrapolates. 0 Hz gives −∞; below, and NaN, give NaN.
 */
export function aWeighting_dB(frequency_Hz: number): number {
  return frequency_Hz >= 0 ? gain_dB(frequency_Hz) - GAIN_AT_1000_DB : NaN;
}

function gain_dB(frequency_Hz: number): number {
  const f2 = frequency_Hz ** 2;
  const poles = (f2 + F1_HZ ** 2) * Math.sqrt((f2 + F2_HZ ** 2) * (f2 + F3_HZ ** 2)) * (f2 + F4_HZ ** 2);
  return 20 * Math.log10((F4_HZ ** 2 * f2 ** 2) / poles);
}
