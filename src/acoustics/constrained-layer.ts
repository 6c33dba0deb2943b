/**
 * Two sheets with a thin viscoelastic layer between: bending stiffness and loss factor by constrained-layer theory.
 *
 * Source: Ross, Ungar & Kerwin, "Damping of plate flexural vibrations by means of viscoelastic laminae", in Structural
 * Damping, ASME 1959: B = B1 + B3 + B_c g/(1+g), g = G/(t2 k²)·(1/D1 + 1/D3), all complex, with D = Eh the stiffness of a sheet
 * in its plane and k the bending wave number, found by iteration.
 */
export interface BendingSheet {
  readonly bending_Nm: number;
  readonly lossFactor: number;
  /** E h, N/m. */
  readonly inPlane_N_m: number;
  readonly thickness_m: number;
  readonly surfaceMass_kg_m2: number;
}

/**
 * The layer assumed between sheets that are 'damped': a damping compound spread 0.5 mm thick with shear modulus 0.6 MPa
 * and loss factor 1 at room temperature. Assumed values of the usual order (Mead, Passive Vibration Control, 1998, from
 * memory); no product.
 */
const LAYER = { thickness_m: 0.0005, shearModulus_Pa: 0.6e6, lossFactor: 1 };

const ITERATIONS = 4;

/** Stiffness (real part) and loss factor of the pair at `omega_rad_s`. Valid while the pair bends as one plate. */
export function constrainedPair(
  upper: BendingSheet,
  lower: BendingSheet,
  omega_rad_s: number,
): { readonly bending_Nm: number; readonly lossFactor: number } {
  const own = upper.bending_Nm + lower.bending_Nm;
  const ownLoss = upper.bending_Nm * upper.lossFactor + lower.bending_Nm * lower.lossFactor;
  const arm = (upper.thickness_m + lower.thickness_m) / 2 + LAYER.thickness_m;
  const softer = 1 / upper.inPlane_N_m + 1 / lower.inPlane_N_m;
  const coupling = (arm * arm) / softer;
  const mass = upper.surfaceMass_kg_m2 + lower.surfaceMass_kg_m2;
  let real = own + coupling / 2;
  let imaginary = 0;
  for (let i = 0; i < ITERATIONS; i++) {
    const k2 = omega_rad_s * Math.sqrt(mass / real);
    const g = (LAYER.shearModulus_Pa * softer) / (LAYER.thickness_m * k2);
    const gIm = g * LAYER.lossFactor;
    const size = (1 + g) ** 2 + gIm ** 2;
    real = own + (coupling * (g * (1 + g) + gIm * gIm)) / size;
    imaginary = ownLoss + (coupling * gIm) / size;
  }
  return { bending_Nm: real, lossFactor: imaginary / real };
}
