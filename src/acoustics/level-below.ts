import { type FieldRooms, SABINE_ISO_S_M } from './ratings/field-ratings.ts';
import { type Spectrum, valuesAt } from './ratings/spectrum.ts';

export interface RoomAndFloor extends FieldRooms {
  /** One value for all bands. */
  readonly reverberationTime_s: number;
}

/** Sabine's absorption area of the room below, m²: A = 0.16 V/T (ISO 16283-1:2014, clause 3). */
export function absorptionArea_m2({ receivingVolume_m3, reverberationTime_s }: RoomAndFloor): number {
  return (SABINE_ISO_S_M * receivingVolume_m3) / reverberationTime_s;
}

/**
 * Level in the room below a floor per band, dB: L2 = L1 − R + 10 lg(S/A), for diffuse fields in both rooms (the definition
 * of R in ISO 16283-1:2014, clause 3, turned round).
 *
 * @param R_dB One value per band of `bands_Hz`.
 * @param above Levels in the room above, one-third octaves as `bands_Hz`.
 * @returns NaN for a band without R or without a level above.
 * @throws RangeError for an area, volume or time that is not above 0.
 */
export function levelBelow_dB(
  bands_Hz: readonly number[],
  R_dB: readonly number[],
  above: Spectrum,
  rooms: RoomAndFloor,
): number[] {
  for (const name of ['partitionArea_m2', 'receivingVolume_m3', 'reverberationTime_s'] as const) {
    if (!(rooms[name] > 0)) throw new RangeError(`${name} must be > 0, got ${rooms[name]}`);
  }
  const gain_dB = 10 * Math.log10(rooms.partitionArea_m2 / absorptionArea_m2(rooms));
  return valuesAt(above, bands_Hz).map((level_dB, i) => level_dB - R_dB[i]! + gain_dB);
}
