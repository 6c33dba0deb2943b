import type { Construction } from '#src/acoustics/construction.ts';
import { roomSizeBelow } from '#src/acoustics/room-below.ts';
import { type BandMeaning, bandMeaning, diffuseFrom_Hz, type RoomSize } from '#src/acoustics/room-modes.ts';
import { exactBandOf } from '#src/acoustics/standards/iec-61260.ts';
import type { RoomBelow } from './room-options.ts';

/** What the band levels mean in the room below. */
export interface RoomModes {
  /** The room that modes are counted in; what of its sides is not given is assumed (`roomSizeBelow`). */
  readonly room: RoomSize;
  readonly meaning: readonly BandMeaning[];
  /** From this band up every band holds five modes or more; null where the highest does not. */
  readonly diffuseFrom_Hz: number | null;
}

export function roomModes(construction: Construction, bands_Hz: readonly number[], below?: RoomBelow): RoomModes {
  const room = roomSizeBelow(construction, below?.receivingVolume_m3);
  const meaning = bands_Hz.map((band_Hz) => bandMeaning(room, exactBandOf(band_Hz)));
  const from_Hz = diffuseFrom_Hz(room, bands_Hz);
  return { room, meaning, diffuseFrom_Hz: Number.isFinite(from_Hz) ? from_Hz : null };
}
