/** A prediction of round numbers for tests of pictures: nothing here is computed by the engine or means a floor. */
import type { BandMechanism, Prediction } from '#src/acoustics/prediction.ts';

export const BANDS_HZ = [
  50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000,
] as const;

/** `level_dB` at 500 Hz; the curve climbs by 2 dB a band from there and bends down around 2500 Hz. */
export function madeUpPrediction(level_dB = 45, changes: Partial<Prediction> = {}): Prediction {
  const direct = BANDS_HZ.map((_, i) => level_dB + 2 * (i - 10) - (i > 15 && i < 19 ? 6 : 0));
  const supports = BANDS_HZ.map((_, i) => level_dB + 6 + 1.2 * (i - 10));
  const flanking = BANDS_HZ.map((_, i) => 66 + (i - 10));
  const sum = (...paths: number[][]) =>
    BANDS_HZ.map((_, i) => -10 * Math.log10(paths.reduce((t, p) => t + 10 ** (-p[i]! / 10), 0)));
  const R_dB = sum(direct, supports, flanking);
  const mechanisms = BANDS_HZ.map((_, i): BandMechanism => {
    const share = 10 ** ((R_dB[i]! - direct[i]!) / 10);
    if (share < 0.5) return { path: 'supports', share: 1 - share, mechanism: 'supports' };
    if (i < 3) return { path: 'direct', share, mechanism: 'mass-spring-mass', frequency_Hz: 62 };
    return { path: 'direct', share, mechanism: 'double-leaf', frequency_Hz: 62 };
  });
  const impactMechanisms = BANDS_HZ.map((_, i): BandMechanism => {
    if (i < 3) return { path: 'direct', share: 0.8, mechanism: 'mobility' };
    if (i < 12) return { path: 'direct', share: 0.8, mechanism: 'double-leaf', frequency_Hz: 62 };
    return { path: 'direct', share: 0.8, mechanism: 'hammer-contact', frequency_Hz: 600, effect_dB: i - 8 };
  });
  const impact = BANDS_HZ.map((_, i) => 80 - level_dB / 3 - 1.5 * (i - 5));
  return {
    bands_Hz: BANDS_HZ,
    R_dB,
    paths_dB: { direct, supports, flanking },
    Ln_dB: impact,
    impactPaths_dB: { direct: impact.map((l) => l - 1), supports: impact.map((l) => l - 6.9) },
    ratings: {
      STC: level_dB,
      OITC: level_dB - 8,
      Rw: level_dB,
      C: -2,
      Ctr: -7,
      C50_3150: -3,
      Ctr50_3150: -12,
      C50_5000: -2,
      Ctr50_5000: -12,
      C100_5000: -1,
      Ctr100_5000: -7,
      IIC: 45,
      Lnw: 65,
      CI: 0,
      CI50_2500: 4,
    },
    surfaceMass_kg_m2: 48,
    height_m: 0.31,
    resonances_Hz: [{ frequency_Hz: 62, name: 'deck and ceiling bounce on the air', kind: 'mass-spring-mass' }],
    criticalFrequencies_Hz: [
      { frequency_Hz: 2500, name: 'bending waves in the ceiling', kind: 'critical' },
      { frequency_Hz: 1300, name: 'bending waves in the deck', kind: 'critical' },
    ],
    mechanisms,
    impactMechanisms,
    ...changes,
  };
}
