/** EN 12354-1:2000, Annex B, table B.1 (from memory, unverified). */
export const HOMOGENEOUS_MATERIALS = {
  concrete: { density_kg_m3: 2300, longitudinalSpeed_m_s: 3500, internalLossFactor: 0.006 },
  'calcium-silicate blocks': { density_kg_m3: 1750, longitudinalSpeed_m_s: 2600, internalLossFactor: 0.015 },
  'lightweight concrete': { density_kg_m3: 1300, longitudinalSpeed_m_s: 1700, internalLossFactor: 0.015 },
  'autoclaved aerated concrete': { density_kg_m3: 400, longitudinalSpeed_m_s: 1400, internalLossFactor: 0.01 },
} as const;
