import { expect, it } from 'vitest';
import { bandMeaning, roomModes_Hz } from '#src/acoustics/room-modes.ts';

it('a room 5 × 4 × 2.5 m has its first modes at c/2l = 34.3, 42.9, 55.0 and 68.6 Hz (own hand-worked case)', () => {
  const modes = roomModes_Hz({ length_m: 5, width_m: 4, height_m: 2.5 }, 70);
  expect(modes.map((f) => Number(f.toFixed(1)))).toEqual([34.3, 42.9, 54.9, 68.6, 68.6]);
});

it('says that a band below the first mode has none, and that high bands are full of them', () => {
  const room = { length_m: 5, width_m: 4, height_m: 2.5 };
  expect(bandMeaning(room, { lower_Hz: 22, upper_Hz: 28 })).toBe('no-modes');
  expect(bandMeaning(room, { lower_Hz: 44.7, upper_Hz: 56.2 })).toBe('few-modes');
  expect(bandMeaning(room, { lower_Hz: 178, upper_Hz: 224 })).toBe('diffuse');
});
