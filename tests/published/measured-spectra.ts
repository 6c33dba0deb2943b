/**
 * Octave-band transmission loss and ratings of common constructions.
 *
 * H: handbook table "Transmission loss and STC values for common partitions" (chapter Building Acoustics, Springer
 * Handbook of Acoustics, 2007, table 11.4), read in a published copy; typical values, no masses given there.
 * E: Egan, Architectural Acoustics, 1988, "Transmission loss data for common building elements", from memory, unverified,
 * except where the same six values and STC stand in H (H+E).
 * U: UFC 3-450-01 (2003), table 4-8, US Government work, read in a published copy.
 */
export interface MeasuredSpectrum {
  readonly source: 'H+E' | 'H' | 'E' | 'U';
  readonly description: string;
  /** Octave bands 125–4000 Hz, dB. Those tests began at 125 Hz: the bandwidth of the first column is uncertain. */
  readonly TL_dB: readonly [number, number, number, number, number, number];
  readonly STC: number;
  readonly IIC?: number;
}

export const MEASURED_SPECTRA = {
  w1: {
    source: 'H+E',
    description: '2×4 in wood studs 406 mm oc, 12.7 mm gypsum board both sides, no fill',
    TL_dB: [17, 31, 33, 40, 38, 36],
    STC: 33,
  },
  w2: { source: 'H+E', description: 'w1 with 50 mm glass fibre', TL_dB: [15, 30, 34, 44, 46, 41], STC: 37 },
  w3: {
    source: 'H',
    description: 'double layer of 12.7 mm gypsum board each side on wood studs',
    TL_dB: [25, 34, 41, 51, 48, 50],
    STC: 41,
  },
  w4: {
    source: 'H+E',
    description: '2.5 in steel studs 610 mm oc, one gypsum board (15.9 mm in E, 12.7 mm in H) both sides',
    TL_dB: [22, 27, 43, 47, 37, 46],
    STC: 39,
  },
  w5: { source: 'H+E', description: 'w4 with 50 mm glass fibre', TL_dB: [26, 41, 52, 54, 45, 51], STC: 45 },
  f1: {
    source: 'H+E',
    description:
      '2×10 in joists 406 mm oc, 12.7 mm plywood + 19.8 mm oak, 15.9 mm gypsum board (E; 12.7 mm in H) direct, no fill',
    TL_dB: [23, 32, 36, 45, 49, 56],
    STC: 37,
    IIC: 32,
  },
  f2: {
    source: 'E',
    description: 'f1 with the board on resilient channels 610 mm oc, no fill',
    TL_dB: [30, 35, 44, 50, 54, 60],
    STC: 47,
    IIC: 39,
  },
  f3: { source: 'E', description: 'f2 with 75 mm glass fibre', TL_dB: [36, 40, 45, 52, 58, 64], STC: 49, IIC: 46 },
  f4: {
    source: 'E',
    description:
      '457 mm steel joists 406 mm oc, 41 mm concrete on 15.9 mm plywood, heavy carpet on pad, 15.9 mm gypsum board direct',
    TL_dB: [27, 37, 45, 54, 60, 65],
    STC: 47,
    IIC: 62,
  },
  s1: { source: 'E', description: '100 mm reinforced concrete', TL_dB: [48, 42, 45, 56, 57, 66], STC: 44, IIC: 25 },
  s2: { source: 'E', description: '150 mm reinforced concrete', TL_dB: [38, 43, 52, 59, 67, 72], STC: 55, IIC: 34 },
  s3: { source: 'H', description: '200 mm concrete floor', TL_dB: [32, 38, 47, 52, 57, 63], STC: 50 },
  s4: {
    source: 'E',
    description: 's2 with 19 mm wood flooring on 38×50 mm battens on 25 mm glass fibre',
    TL_dB: [38, 44, 52, 55, 60, 65],
    STC: 55,
    IIC: 57,
  },
  g1: { source: 'H+E', description: '3 mm glass', TL_dB: [18, 21, 26, 31, 33, 22], STC: 26 },
  g2: { source: 'E', description: '6 mm glass', TL_dB: [25, 28, 31, 34, 30, 37], STC: 31 },
  g3: { source: 'U', description: '12.7 mm glass', TL_dB: [24, 27, 29, 29, 31, 36], STC: 30 },
  g4: { source: 'U', description: '19 mm glass', TL_dB: [26, 28, 29, 30, 32, 38], STC: 31 },
} as const satisfies Record<string, MeasuredSpectrum>;
