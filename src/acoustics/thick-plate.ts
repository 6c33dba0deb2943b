/**
 * Bending stiffness of a thick plate, falling with frequency as shear takes over, per unit of its thin-plate value.
 *
 * B(f) = B/r², r = x + √(1 + x²), x = 4.05 h f/cL; beyond fp = cL/5.5h the branch fc,eff = 2 fc (f/fp)³.
 * Source: EN 12354-1:2000, Annex B (effective critical frequency). The two branches are joined by the softer of the two.
 * @param longitudinalSpeed_m_s cL = √(E/(ρ(1−ν²))).
 */
export function thickPlateFactor(f_Hz: number, thickness_m: number, longitudinalSpeed_m_s: number): number {
  const fp_Hz = longitudinalSpeed_m_s / (5.5 * thickness_m);
  const over = f_Hz / fp_Hz;
  const beyond = 2 * over * over * over;
  const rise = Math.max(shearRise(f_Hz, thickness_m, longitudinalSpeed_m_s), beyond);
  return 1 / (rise * rise);
}

/**
 * The first branch alone, which shear takes as it begins to tell: r = fc,eff/fc, 1 or more.
 *
 * Source and parameters as of `thickPlateFactor`.
 */
export function shearRise(f_Hz: number, thickness_m: number, longitudinalSpeed_m_s: number): number {
  const x = (4.05 * thickness_m * f_Hz) / longitudinalSpeed_m_s;
  return x + Math.sqrt(1 + x * x);
}

/** Where both branches of `thickPlateFactor` meet, times h/cL: 2y³ = r(y) with y = f/fp. */
const JOINT = 0.9956 / 5.5;

/** Frequency at which the softening of a thick plate goes over to the steeper branch: a kink. */
export function softeningKink_Hz(thickness_m: number, longitudinalSpeed_m_s: number): number {
  return (JOINT * longitudinalSpeed_m_s) / thickness_m;
}
