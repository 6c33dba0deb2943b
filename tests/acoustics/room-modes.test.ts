import { expect, it } from 'vitest';
import { bandMeaning, diffuseFrom_Hz, type RoomSize } from '#src/acoustics/room-modes.ts';
import { exactBandOf } from '#src/acoustics/standards/iec-61260.ts';
import { nominalBandsFrom } from '#src/acoustics/third-octave-bands.ts';

/** Natural frequencies up to `highest_Hz`, one by one. Kuttruff, Room Acoustics, eq. (3.15). */
function roomModes_Hz({ length_m, width_m, height_m }: RoomSize, highest_Hz: number): number[] {
  const [x, y, z] = [length_m, width_m, height_m].map((side_m) => 343.2 / (2 * side_m)) as [number, number, number];
  const modes: number[] = [];
  for (let l = 0; l * x <= highest_Hz; l++)
    for (let m = 0; m * y <= highest_Hz; m++)
      for (let n = 0; n * z <= highest_Hz; n++) modes.push(Math.hypot(l * x, m * y, n * z));
  return modes.filter((f) => f > 0 && f <= highest_Hz).sort((f, g) => f - g);
}

it('the list that bands are held to: a room 5 × 4 × 2.5 m has its first modes at c/2l = 34.3, 42.9, 55.0 and 68.6 Hz (own hand-worked case)', () => {
  const modes = roomModes_Hz({ length_m: 5, width_m: 4, height_m: 2.5 }, 70);
  expect(modes.map((f) => Number(f.toFixed(1)))).toEqual([34.3, 42.9, 54.9, 68.6, 68.6]);
});

it('says that a band below the first mode has none, and that high bands are full of them', () => {
  const room = { length_m: 5, width_m: 4, height_m: 2.5 };
  expect(bandMeaning(room, { lower_Hz: 22, upper_Hz: 28 })).toBe('no-modes');
  expect(bandMeaning(room, { lower_Hz: 44.7, upper_Hz: 56.2 })).toBe('few-modes');
  expect(bandMeaning(room, { lower_Hz: 178, upper_Hz: 224 })).toBe('diffuse');
});

it.each([
  { length_m: 5, width_m: 4, height_m: 2.5 },
  { length_m: 2.5, width_m: 9, height_m: 3.1 },
  { length_m: 3, width_m: 3, height_m: 3 },
])('counts in every band what listing the modes one by one gives: $length_m × $width_m × $height_m m', (room) => {
  for (const band_Hz of nominalBandsFrom(20).filter((f) => f <= 250)) {
    const { lower_Hz, upper_Hz } = exactBandOf(band_Hz);
    const inside = roomModes_Hz(room, upper_Hz).filter((f) => f >= lower_Hz).length;
    const meaning = inside >= 5 ? 'diffuse' : inside > 0 ? 'few-modes' : 'no-modes';
    expect(bandMeaning(room, { lower_Hz, upper_Hz }), `${band_Hz} Hz`).toBe(meaning);
  }
});

it('a hall of 100 000 m³ has modes enough from 20 Hz up, a closet of 1 m³ not before 400 Hz', () => {
  const bands_Hz = nominalBandsFrom(20);
  expect(diffuseFrom_Hz({ length_m: 100, width_m: 50, height_m: 20 }, bands_Hz)).toBe(20);
  expect(diffuseFrom_Hz({ length_m: 1, width_m: 1, height_m: 1 }, bands_Hz)).toBeGreaterThanOrEqual(400);
});

it('refuses a room without height', () => {
  expect(() => diffuseFrom_Hz({ length_m: 5, width_m: 4, height_m: 0 }, [50])).toThrow('room sides must be > 0');
});
