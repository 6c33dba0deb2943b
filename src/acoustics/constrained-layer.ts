/**
 * Two sheets with a thin viscoelastic layer between: bending stiffness and loss factor by constrained-layer theory.
 *
 * Source: Ross, Ungar & Kerwin, "Damping of plate flexural vibrations by means of viscoelastic laminae", in Structural
 * Damping, ASME 1959: B = B1 + B3 + B_c g/(1+g), g = G/(t2 k²)·(1/D1 + 1/D3), B_c = d²/(1/D1 + 1/D3), all complex, with D the
 * stiffness of a sheet in its plane, d the distance of the sheets' neutral axes and k the bending wave number, found by iteration.
 */
export interface BendingSheet {
  readonly bending_Nm: number;
  readonly lossFactor: number;
  /** Eh/(1−ν²), N/m: the other direction is kept from contracting, as in bending. */
  readonly inPlane_N_m: number;
  /** Where it is stretched; another than `lossFactor` in several sheets on each other. */
  readonly inPlaneLossFactor: number;
  readonly surfaceMass_kg_m2: number;
  /** From the neutral axis up and down, m. */
  readonly upperFace_m: number;
  readonly lowerFace_m: number;
}

export interface DampingLayer {
  readonly thickness_m: number;
  readonly shearModulus_Pa: number;
  readonly lossFactor: number;
}

/**
 * The layer assumed between sheets that are 'damped': a damping compound spread 0.5 mm thick with shear modulus 0.6 MPa
 * and loss factor 1 at room temperature. Assumed values of the usual order (Mead, Passive Vibration Control, 1998, from
 * memory); no product.
 */
export const DAMPING_LAYER: DampingLayer = { thickness_m: 0.0005, shearModulus_Pa: 0.6e6, lossFactor: 1 };

const ITERATIONS = 4;

/**
 * The pair as one sheet at `omega_rad_s`. Valid while it bends as one plate. Several pairs in turn, the third sheet on the first two
 * and so on, are off by up to a quarter in stiffness and loss, in which the pair is not stretched alone but sheared again.
 */
export function constrainedPair(
  upper: BendingSheet,
  lower: BendingSheet,
  omega_rad_s: number,
  layer: DampingLayer = DAMPING_LAYER,
): BendingSheet {
  const own = upper.bending_Nm + lower.bending_Nm;
  const ownIm = upper.bending_Nm * upper.lossFactor + lower.bending_Nm * lower.lossFactor;
  const arm = upper.lowerFace_m + layer.thickness_m + lower.upperFace_m;
  const surfaceMass_kg_m2 = upper.surfaceMass_kg_m2 + lower.surfaceMass_kg_m2;
  // 1/D1 + 1/D3
  const upperGive = 1 / (upper.inPlane_N_m * (1 + upper.inPlaneLossFactor ** 2));
  const lowerGive = 1 / (lower.inPlane_N_m * (1 + lower.inPlaneLossFactor ** 2));
  const give = upperGive + lowerGive;
  const giveIm = -upperGive * upper.inPlaneLossFactor - lowerGive * lower.inPlaneLossFactor;
  let real = own + (arm * arm) / (2 * give);
  let imaginary = 0;
  for (let i = 0; i < ITERATIONS; i++) {
    // B_c g/(1+g) = d²/(1/D1 + 1/D3 + t2k²/G)
    const slip = (layer.thickness_m * omega_rad_s * Math.sqrt(surfaceMass_kg_m2 / real)) / layer.shearModulus_Pa;
    const slipRe = slip / (1 + layer.lossFactor ** 2);
    const softRe = give + slipRe;
    const softIm = giveIm - slipRe * layer.lossFactor;
    const size = softRe * softRe + softIm * softIm;
    real = own + (arm * arm * softRe) / size;
    imaginary = ownIm - (arm * arm * softIm) / size;
  }
  const inPlane_N_m = upper.inPlane_N_m + lower.inPlane_N_m;
  const down_m = (arm * lower.inPlane_N_m) / inPlane_N_m;
  return {
    bending_Nm: real,
    lossFactor: imaginary / real,
    inPlane_N_m,
    inPlaneLossFactor:
      (upper.inPlane_N_m * upper.inPlaneLossFactor + lower.inPlane_N_m * lower.inPlaneLossFactor) / inPlane_N_m,
    surfaceMass_kg_m2,
    upperFace_m: upper.upperFace_m + down_m,
    lowerFace_m: lower.lowerFace_m + arm - down_m,
  };
}
