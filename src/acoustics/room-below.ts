import type { Construction } from './construction.ts';
import type { RoomSize } from './room-modes.ts';

/** A room's height where nothing says another, m: common practice, no source. */
export const ASSUMED_ROOM_HEIGHT_m = 2.5;

/** Heights that a volume over the floor's own sides may give, m; else its plan is taken larger or smaller. Our own choice. */
const LIKELY_HEIGHT_m = { min: 2, max: 8 };

/**
 * The room below a floor, for want of its sides: those of the floor, or others in their proportion where the volume would
 * make the room a shaft or a slit.
 *
 * @param volume_m3 > 0; undefined: as the assumed height gives.
 */
export function roomSizeBelow(
  { length_m, width_m }: Pick<Construction, 'length_m' | 'width_m'>,
  volume_m3: number | undefined,
): RoomSize {
  const area_m2 = length_m * width_m;
  const height_m = volume_m3 === undefined ? ASSUMED_ROOM_HEIGHT_m : volume_m3 / area_m2;
  if (height_m >= LIKELY_HEIGHT_m.min && height_m <= LIKELY_HEIGHT_m.max) return { length_m, width_m, height_m };
  const scale = Math.sqrt(height_m / ASSUMED_ROOM_HEIGHT_m);
  return { length_m: length_m * scale, width_m: width_m * scale, height_m: ASSUMED_ROOM_HEIGHT_m };
}
