/** Mobility of an unbounded plate at a point, 1/(8√(Bm')), real, m/(N·s). Cremer, Heckl & Petersson, Structure-Borne Sound. */
export function pointMobility_m_Ns(bending_Nm: number, surfaceMass_kg_m2: number): number {
  return 1 / (8 * Math.sqrt(bending_Nm * surfaceMass_kg_m2));
}
