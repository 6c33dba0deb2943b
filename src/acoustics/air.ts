/** The air on both sides of the floor and in its cavities. */
export interface Air {
  readonly density_kg_m3: number;
  readonly soundSpeed_m_s: number;
  readonly viscosity_Pa_s: number;
  /** Ratio of specific heats, γ. */
  readonly heatRatio: number;
  /** How much faster momentum than heat spreads: viscosity times specific heat over heat conduction. */
  readonly prandtlNumber: number;
}

/**
 * Air at 20 °C and 101.325 kPa: ISO 9613-1:1993 gives c = 343.2 m/s; the density follows from the ideal gas law. Viscosity,
 * γ and Prandtl number as in tables of dry air (from memory).
 */
export const ROOM_AIR: Air = {
  density_kg_m3: 1.204,
  soundSpeed_m_s: 343.2,
  viscosity_Pa_s: 1.81e-5,
  heatRatio: 1.4,
  prandtlNumber: 0.71,
};
