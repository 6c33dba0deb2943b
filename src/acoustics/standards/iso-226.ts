/**
 * ISO 226, normal equal-loudness-level contours: parameters of formula (1), table 1, in the editions of 2003 and 2023.
 *
 * From memory, unverified; the formula's own checks (1 kHz gives the loudness level itself) hold.
 */
export type Iso226Edition = '2003' | '2023';

export interface LoudnessParameters {
  readonly band_Hz: number;
  /** Exponent of loudness perception, alpha_f. */
  readonly exponent: number;
  /** Magnitude of the linear transfer function, normalised at 1 kHz, L_U, dB. */
  readonly transfer_dB: number;
  /** Threshold of hearing, T_f, dB. */
  readonly threshold_dB: number;
}

function rows(table: readonly (readonly [number, number, number, number])[]): readonly LoudnessParameters[] {
  return table.map(([band_Hz, exponent, transfer_dB, threshold_dB]) => ({
    band_Hz,
    exponent,
    transfer_dB,
    threshold_dB,
  }));
}

/** Rows: nominal band in Hz, alpha_f, L_U in dB, T_f in dB. */
export const LOUDNESS_PARAMETERS: Readonly<Record<Iso226Edition, readonly LoudnessParameters[]>> = {
  // biome-ignore format: table
  '2003': rows([
  [20, 0.532, -31.6, 78.5],
  [25, 0.506, -27.2, 68.7],
  [31.5, 0.48, -23.0, 59.5],
  [40, 0.455, -19.1, 51.1],
  [50, 0.432, -15.9, 44.0],
  [63, 0.409, -13.0, 37.5],
  [80, 0.387, -10.3, 31.5],
  [100, 0.367, -8.1, 26.5],
  [125, 0.349, -6.2, 22.1],
  [160, 0.33, -4.5, 17.9],
  [200, 0.315, -3.1, 14.4],
  [250, 0.301, -2.0, 11.4],
  [315, 0.288, -1.1, 8.6],
  [400, 0.276, -0.4, 6.2],
  [500, 0.267, 0.0, 4.4],
  [630, 0.259, 0.3, 3.0],
  [800, 0.253, 0.5, 2.2],
  [1000, 0.25, 0.0, 2.4],
  [1250, 0.246, -2.7, 3.5],
  [1600, 0.244, -4.1, 1.7],
  [2000, 0.243, -1.0, -1.3],
  [2500, 0.243, 1.7, -4.2],
  [3150, 0.243, 2.5, -6.0],
  [4000, 0.242, 1.2, -5.4],
  [5000, 0.242, -2.1, -1.5],
  [6300, 0.245, -7.1, 6.0],
  [8000, 0.254, -11.2, 12.6],
  [10000, 0.271, -10.7, 13.9],
  [12500, 0.301, -3.1, 12.3],
]),
  // biome-ignore format: table
  '2023': rows([
  [20, 0.635, -31.5, 78.1],
  [25, 0.602, -27.2, 68.7],
  [31.5, 0.569, -23.1, 59.5],
  [40, 0.537, -19.3, 51.1],
  [50, 0.509, -16.1, 44.0],
  [63, 0.482, -13.1, 37.5],
  [80, 0.456, -10.4, 31.5],
  [100, 0.433, -8.2, 26.5],
  [125, 0.412, -6.3, 22.1],
  [160, 0.391, -4.6, 17.9],
  [200, 0.373, -3.2, 14.4],
  [250, 0.357, -2.1, 11.4],
  [315, 0.343, -1.2, 8.6],
  [400, 0.33, -0.5, 6.2],
  [500, 0.32, 0.0, 4.4],
  [630, 0.311, 0.4, 3.0],
  [800, 0.303, 0.5, 2.2],
  [1000, 0.3, 0.0, 2.4],
  [1250, 0.295, -2.7, 3.5],
  [1600, 0.292, -4.2, 1.7],
  [2000, 0.29, -1.2, -1.3],
  [2500, 0.29, 1.4, -4.2],
  [3150, 0.289, 2.3, -6.0],
  [4000, 0.289, 1.0, -5.4],
  [5000, 0.289, -2.3, -1.5],
  [6300, 0.293, -7.2, 6.0],
  [8000, 0.303, -11.2, 12.6],
  [10000, 0.323, -10.9, 13.9],
  [12500, 0.354, -3.5, 12.3],
]),
};
