import type { Prediction, Sound } from '../prediction.ts';
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

export interface FieldValueName {
  readonly key: Exclude<keyof FieldValues, 'limits'>;
  readonly name: string;
  readonly about: string;
  readonly sound: Sound;
  /** Of a level, which flanking raises. */
  readonly isLevel?: true;
}

export const FIELD_VALUE_NAMES: readonly FieldValueName[] = [
  { key: 'ASTC', name: 'ASTC', about: 'apparent sound transmission class, ASTM E336', sound: 'airborne' },
  { key: 'NNIC', name: 'NNIC', about: 'normalized noise isolation class, ASTM E336', sound: 'airborne' },
  { key: 'NIC', name: 'NIC', about: 'noise isolation class in this very room, ASTM E336', sound: 'airborne' },
  { key: 'apparentRw', name: 'R′w', about: 'weighted apparent sound reduction index, ISO 16283-1', sound: 'airborne' },
  { key: 'DnTw', name: 'DnT,w', about: 'weighted standardized level difference, ISO 16283-1', sound: 'airborne' },
  { key: 'Dnw', name: 'Dn,w', about: 'weighted normalized level difference, ISO 16283-1', sound: 'airborne' },
  { key: 'AIIC', name: 'AIIC', about: 'apparent impact insulation class, ASTM E1007', sound: 'impact' },
  { key: 'NISR', name: 'NISR', about: 'normalized impact sound rating, ASTM E1007', sound: 'impact' },
  { key: 'ISR', name: 'ISR', about: 'impact sound rating in this very room, ASTM E1007', sound: 'impact' },
  {
    key: 'apparentLnw',
    name: 'L′n,w',
    about: 'weighted normalized impact level, ISO 16283-2; less is better',
    sound: 'impact',
    isLevel: true,
  },
  {
    key: 'LnTw',
    name: 'L′nT,w',
    about: 'weighted standardized impact level, ISO 16283-2; less is better',
    sound: 'impact',
    isLevel: true,
  },
];

/** The reference reverberation time of dwellings, s, which furnished rooms come near: ISO 16283-1:2014, clause 3. */
export const FURNISHED_ROOM_S = 0.5;

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
