import type { Prediction } from '../prediction.ts';
import { type FieldRooms, fieldRatings } from './field-ratings.ts';

/** Single numbers as they would be measured in the building; NaN where the bands do not suffice. */
export interface FieldValues {
  readonly ASTC: number;
  readonly NNIC: number;
  readonly NIC: number;
  /** R'_w, D_nT,w and D_n,w. */
  readonly apparentRw: number;
  readonly DnTw: number;
  readonly Dnw: number;
  readonly AIIC: number;
  readonly NISR: number;
  readonly ISR: number;
  /** L'_n,w and L'_nT,w. */
  readonly apparentLnw: number;
  readonly LnTw: number;
  /** What ASTM E336 does not allow for this room, in words. */
  readonly limits: readonly string[];
}

/**
 * Field values of a predicted floor above a room: see `fieldRatings` for the standards. They are apparent values only as far
 * as the prediction holds the flanking of that building.
 * @throws RangeError for an area, volume or time that is not above 0.
 */
export function fieldValues(
  prediction: Pick<Prediction, 'bands_Hz' | 'R_dB' | 'Ln_dB'>,
  rooms: FieldRooms,
): FieldValues {
  const f = fieldRatings(prediction, rooms);
  return {
    ASTC: f.ASTC.STC,
    NNIC: f.NNIC.STC,
    NIC: f.NIC.STC,
    apparentRw: f.Rw.Rw,
    DnTw: f.DnTw.Rw,
    Dnw: f.Dnw.Rw,
    AIIC: f.AIIC.IIC,
    NISR: f.NISR.IIC,
    ISR: f.ISR.IIC,
    apparentLnw: f.Lnw.Lnw,
    LnTw: f.LnTw.Lnw,
    limits: f.limits,
  };
}
