import { FURNISHED_ROOM_S } from '#src/acoustics/ratings/field-values.ts';
import { parseQuantity } from '#src/quantities/parse-quantity.ts';

/** The room below, as `--room` and `--reverberation` describe it. */
export interface RoomBelow {
  readonly receivingVolume_m3: number;
  readonly reverberationTime_s: number;
}

/** What the options say, undefined without them, or one sentence on what is wrong. */
export function roomBelow(room: string | undefined, reverberation: string | undefined): RoomBelow | undefined | string {
  if (room === undefined) {
    return reverberation === undefined ? undefined : 'Expected --room with --reverberation, got no --room.';
  }
  const volume = parseQuantity(room, 'volume', 'SI');
  if (!volume.ok) return `--room: ${volume.message}`;
  const time = reverberation === undefined ? undefined : parseQuantity(reverberation, 'time', 'SI');
  if (time && !time.ok) return `--reverberation: ${time.message}`;
  const receivingVolume_m3 = volume.value;
  const reverberationTime_s = time?.value ?? FURNISHED_ROOM_S;
  if (!(receivingVolume_m3 > 0)) return `--room must be more than 0 m³, got ${room}.`;
  if (!(reverberationTime_s > 0)) return `--reverberation must be more than 0 s, got ${reverberation}.`;
  return { receivingVolume_m3, reverberationTime_s };
}
