/** What the reverberant (resonant) field of a finite plate needs to know of it. */
export interface PlateEdges {
  readonly area_m2: number;
  /** Length of the outer edges, simply supported. */
  readonly perimeter_m: number;
  readonly length_m: number;
  readonly width_m: number;
  /** Lines inside that hold the plate fast; absent where there are none. */
  readonly bays?: Bays;
}

export interface Bays {
  /** Both sides of every line, m. */
  readonly perimeter_m: number;
  /** k0 at the plate's first resonance between two lines, rad/m: 2πf/c. */
  readonly resonance_rad_m: number;
}

/**
 * Length of the edges that radiate at wave number `k0_rad_m` of sound, m. Between its lines a plate has no bending waves
 * below its first resonance there, so that the lines come in as x²/(1+x²), x the frequency over that resonance.
 */
function radiatingEdges_m({ perimeter_m, bays }: PlateEdges, k0_rad_m: number): number {
  if (!bays) return perimeter_m;
  const x2 = (k0_rad_m * k0_rad_m) / (bays.resonance_rad_m * bays.resonance_rad_m);
  return perimeter_m + (bays.perimeter_m * x2) / (1 + x2);
}

/** σ never exceeds this: the maximum at the critical frequency in EN 12354-1:2000, Annex B. */
export const MAXIMUM_RADIATION = 2;

const PI4 = Math.PI ** 4;

/**
 * Radiation efficiency of the reverberant field of a plate with critical frequency `fc_Hz`.
 *
 * Source: Leppington, Broadbent & Heron, Proc. R. Soc. A 382, 1982; EN 12354-1:2000, Annex B (δ1, δ2, the limit below
 * the first mode f11). The limit is faded in around f11 instead of switched, so that σ stays continuous.
 * Valid for f > 0; above fc it is 1/√(1 − fc/f).
 */
export function resonantRadiation(f_Hz: number, fc_Hz: number, plate: PlateEdges, soundSpeed_m_s: number): number {
  if (f_Hz > fc_Hz) return Math.min(1 / Math.sqrt(1 - fc_Hz / f_Hz), MAXIMUM_RADIATION);
  const lambda2 = Math.min(f_Hz / fc_Hz, 1 - 1e-12);
  const lambda = Math.sqrt(lambda2);
  const rest = 1 - lambda2;
  const delta1 =
    (rest * Math.log((1 + lambda) / (1 - lambda)) + 2 * lambda) / (4 * Math.PI * Math.PI * rest * Math.sqrt(rest));
  const wavelength_m = soundSpeed_m_s / fc_Hz;
  const radiating_m = radiatingEdges_m(plate, (2 * Math.PI * f_Hz) / soundSpeed_m_s);
  const edges = (radiating_m / plate.area_m2) * wavelength_m * delta1;
  const corners =
    lambda2 < 0.5
      ? (8 * wavelength_m * wavelength_m * (1 - 2 * lambda2)) / (PI4 * plate.area_m2 * lambda * Math.sqrt(rest))
      : 0;
  const { length_m, width_m } = plate;
  const f11_Hz = (soundSpeed_m_s / 4) * wavelength_m * (1 / (length_m * length_m) + 1 / (width_m * width_m));
  const perWave = f_Hz / soundSpeed_m_s;
  const overFirst2 = (f_Hz / f11_Hz) * (f_Hz / f11_Hz);
  const overFirst4 = overFirst2 * overFirst2;
  const piston = 4 * plate.area_m2 * perWave * perWave * (1 + overFirst4 * overFirst4);
  return Math.min(edges + corners, piston, MAXIMUM_RADIATION);
}

/**
 * How the edges' radiation efficiency of one free bending wave slower than sound goes with μ = k/k0 > 1, the same for all
 * plates: the term δ1 above as a function of wave number. Times `perEdgeShape` it is σ, not capped.
 */
export function edgeShape(mu: number): number {
  const root2 = mu * mu - 1;
  return (Math.log((mu + 1) / (mu - 1)) + (2 * mu) / root2) / (mu * Math.sqrt(root2));
}

/** That efficiency of a plate per `edgeShape`, at wave number `k0_rad_m` of sound. */
export function perEdgeShape(k0_rad_m: number, plate: PlateEdges): number {
  return radiatingEdges_m(plate, k0_rad_m) / (2 * Math.PI * k0_rad_m * plate.area_m2);
}
