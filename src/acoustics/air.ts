/** The air on both sides of the floor and in its cavities. */
export interface Air {
  readonly density_kg_m3: number;
  readonly soundSpeed_m_s: number;
}

/** Air at 20 °C and 101.325 kPa: ISO 9613-1:1993 gives c = 343.2 m/s; the density follows from the ideal gas law. */
export const ROOM_AIR: Air = { density_kg_m3: 1.204, soundSpeed_m_s: 343.2 };
