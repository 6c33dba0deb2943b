import { type Air, ROOM_AIR } from './air.ts';
import { exactBandOf } from './standards/iec-61260.ts';

export interface RoomSize {
  readonly length_m: number;
  readonly width_m: number;
  readonly height_m: number;
}

/** Natural frequencies of a room with hard walls up to `highest_Hz`, lowest first. Kuttruff, Room Acoustics, eq. (3.15). */
export function roomModes_Hz(room: RoomSize, highest_Hz: number, air: Air = ROOM_AIR): number[] {
  const steps = [room.length_m, room.width_m, room.height_m].map((side) => {
    if (!(side > 0)) throw new RangeError(`room sides must be > 0, got ${side}`);
    return air.soundSpeed_m_s / (2 * side);
  }) as [number, number, number];
  const [a, b, c] = steps.map((step) => Math.floor(highest_Hz / step)) as [number, number, number];
  const modes: number[] = [];
  for (let l = 0; l <= a; l++) {
    for (let m = 0; m <= b; m++) {
      for (let n = 0; n <= c; n++) {
        const f = Math.hypot(l * steps[0], m * steps[1], n * steps[2]);
        if (f > 0 && f <= highest_Hz) modes.push(f);
      }
    }
  }
  return modes.sort((x, y) => x - y);
}

/**
 * What a band level means in a given room.
 *
 * - 'diffuse': five modes or more in the band: levels and transmission loss mean what they say.
 * - 'few-modes': one to four: the level depends on where one stands; ISO 16283-1 measures in corners there.
 * - 'no-modes': none, the band lies between modes or below the first: a transmission loss of the diffuse field says little.
 *
 * Five modes a band is common practice, no source.
 */
export type BandMeaning = 'diffuse' | 'few-modes' | 'no-modes';

/** @param band Exact edges, Hz. */
export function bandMeaning(
  room: RoomSize,
  band: { readonly lower_Hz: number; readonly upper_Hz: number },
  air: Air = ROOM_AIR,
): BandMeaning {
  const inside = roomModes_Hz(room, band.upper_Hz, air).filter((f) => f >= band.lower_Hz).length;
  return inside >= 5 ? 'diffuse' : inside > 0 ? 'few-modes' : 'no-modes';
}

/**
 * The lowest of `bands_Hz` from which every band holds five modes or more, Hz; Infinity where none does. Below it band
 * levels depend on the place.
 */
export function diffuseFrom_Hz(room: RoomSize, bands_Hz: readonly number[], air: Air = ROOM_AIR): number {
  let from = Number.POSITIVE_INFINITY;
  for (const band_Hz of [...bands_Hz].reverse()) {
    if (bandMeaning(room, exactBandOf(band_Hz), air) !== 'diffuse') return from;
    from = band_Hz;
  }
  return from;
}
