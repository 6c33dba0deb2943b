import { HEAVY_FLOOR, HEAVY_FLOOR_IIC } from '../standards/iso-717-2-reference-floors.ts';
import type { AstmRounding } from './astm-rounding.ts';
import { lessImprovement } from './delta-lw.ts';
import { type Iic, iic } from './iic.ts';
import type { Spectrum } from './spectrum.ts';

export interface DeltaIic {
  /** Improvement of the impact insulation class by a covering on the reference concrete floor. */
  readonly dIIC: number;
  /** Rating of the reference floor with the covering. */
  readonly covered: Iic;
}

/**
 * ΔIIC = IIC of the reference floor with the covering − 28.
 *
 * Source: ASTM E2179, clause 7 (from memory, unverified). The reference floor carries half decibels, so one decimal is
 * kept unless asked otherwise.
 * @param improvement Reduction of impact level in one-third octaves 100–3150 Hz, dB.
 */
export function deltaIic(improvement: Spectrum, rounding: AstmRounding = {}): DeltaIic {
  const covered = iic(lessImprovement(HEAVY_FLOOR, improvement), { rounding: 'tenth', ...rounding });
  return { dIIC: covered.IIC - HEAVY_FLOOR_IIC, covered };
}
