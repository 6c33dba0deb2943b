import { type Air, ROOM_AIR } from './air.ts';
import { exactBandOf } from './standards/iec-61260.ts';

export interface RoomSize {
  readonly length_m: number;
  readonly width_m: number;
  readonly height_m: number;
}

/** c/2 over each side, Hz, the longest side last. @throws RangeError for a side that is not above 0. */
function modeSteps_Hz(room: RoomSize, air: Air): readonly [number, number, number] {
  const steps = [room.length_m, room.width_m, room.height_m].map((side) => {
    if (!(side > 0)) throw new RangeError(`room sides must be > 0, got ${side}`);
    return air.soundSpeed_m_s / (2 * side);
  });
  return steps.sort((f, g) => g - f) as [number, number, number];
}

/**
 * How many natural frequencies of a room with hard walls lie in a band, edges included (Kuttruff, Room Acoustics, eq.
 * (3.15)), counted no further than `enough`: then a hall at high frequency costs as little as a closet.
 */
function modesInside(room: RoomSize, { lower_Hz, upper_Hz }: BandEdges, enough: number, air: Air): number {
  const [x, y, z] = modeSteps_Hz(room, air);
  let count = 0;
  for (let l = 0; l * x <= upper_Hz; l++) {
    for (let m = 0; Math.hypot(l * x, m * y) <= upper_Hz; m++) {
      // Along the longest side whole rows are counted at once.
      const across2 = (l * x) ** 2 + (m * y) ** 2;
      const first = Math.ceil(Math.sqrt(Math.max(0, lower_Hz ** 2 - across2)) / z);
      const last = Math.floor(Math.sqrt(Math.max(0, upper_Hz ** 2 - across2)) / z);
      count += Math.max(0, last - first + 1);
      if (count >= enough) return count;
    }
  }
  return count;
}

/** Exact edges of a band, Hz, > 0. */
interface BandEdges {
  readonly lower_Hz: number;
  readonly upper_Hz: number;
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

const ENOUGH_MODES = 5;

export function bandMeaning(room: RoomSize, band: BandEdges, air: Air = ROOM_AIR): BandMeaning {
  const inside = modesInside(room, band, ENOUGH_MODES, air);
  return inside >= ENOUGH_MODES ? 'diffuse' : inside > 0 ? 'few-modes' : 'no-modes';
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
