import { expect, test } from 'vitest';
import { roomSizeBelow } from '#src/acoustics/room-below.ts';

const floor = { length_m: 6, width_m: 4.2 };

test.each([10, 63, 150, 5000])(
  'the room below has %d m³, the proportion of the floor and no odd height',
  (volume_m3) => {
    const { length_m, width_m, height_m } = roomSizeBelow(floor, volume_m3);
    expect(length_m * width_m * height_m).toBeCloseTo(volume_m3, 9);
    expect(height_m).toBeGreaterThanOrEqual(2);
    expect(height_m).toBeLessThanOrEqual(8);
    expect(length_m / width_m).toBeCloseTo(6 / 4.2, 9);
  },
);

test('a room of which nothing is known has the floor’s sides and is 2.5 m high, one of likely height its sides too', () => {
  expect(roomSizeBelow(floor, undefined)).toEqual({ ...floor, height_m: 2.5 });
  expect(roomSizeBelow(floor, 6 * 4.2 * 4)).toEqual({ ...floor, height_m: expect.closeTo(4, 12) });
});
