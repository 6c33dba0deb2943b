import { ROOM_AIR } from '#src/acoustics/air.ts';
import type { Construction } from '#src/acoustics/construction.ts';
import { type BandMeaning, bandMeaning, type RoomSize } from '#src/acoustics/room-modes.ts';
import { exactBandOf } from '#src/acoustics/standards/iec-61260.ts';
import type { RoomBelow } from './room-options.ts';

/** What the band levels mean in the room below. */
export interface RoomModes {
  /**
   * The room that modes are counted in: 2.5 m high (assumed), on the floor's sides, or on sides of the same proportion that
   * give the volume asked for.
   */
  readonly room: RoomSize;
  readonly meaning: readonly BandMeaning[];
  /** From this band up every band holds five modes or more; null where the highest does not. */
  readonly diffuseFrom_Hz: number | null;
}

const ASSUMED_HEIGHT_m = 2.5;
/** So many modes on the average of a band are never fewer than five in it: they need not be counted one by one. */
const PLENTY = 60;

export function roomModes(
  { length_m, width_m }: Construction,
  bands_Hz: readonly number[],
  below?: RoomBelow,
): RoomModes {
  const floor_m2 = length_m * width_m;
  const scale = below ? Math.sqrt(below.receivingVolume_m3 / ASSUMED_HEIGHT_m / floor_m2) : 1;
  const room = { length_m: scale * length_m, width_m: scale * width_m, height_m: ASSUMED_HEIGHT_m };
  const meaning = bands_Hz.map((band_Hz): BandMeaning => {
    const band = exactBandOf(band_Hz);
    return averageModes(room, band) >= PLENTY ? 'diffuse' : bandMeaning(room, band);
  });
  const last = meaning.findLastIndex((m) => m !== 'diffuse');
  return { room, meaning, diffuseFrom_Hz: bands_Hz[last + 1] ?? null };
}

/** Volume term of the number of modes below f, 4πV f³/3c³ (Kuttruff, Room Acoustics, ch. 3): the other terms only add. */
function averageModes(
  { length_m, width_m, height_m }: RoomSize,
  { lower_Hz, upper_Hz }: { readonly lower_Hz: number; readonly upper_Hz: number },
): number {
  const volume_m3 = length_m * width_m * height_m;
  return (
    (4 / 3) *
    Math.PI *
    volume_m3 *
    ((upper_Hz / ROOM_AIR.soundSpeed_m_s) ** 3 - (lower_Hz / ROOM_AIR.soundSpeed_m_s) ** 3)
  );
}
