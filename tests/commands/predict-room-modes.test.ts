import { describe, expect, test } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { nominalBandsFrom } from '#src/acoustics/third-octave-bands.ts';
import { roomModes } from '../../src/commands/predict-room-modes.ts';

const bands_Hz = nominalBandsFrom(20);
const floor = { length_m: 5, width_m: 4, layers: [] } as Construction;

describe('what band levels mean in the room below', () => {
  test('5 × 4 × 2.5 m: no mode below c/2l = 34.3 Hz, few up to 80 Hz (own case, modes counted by hand)', () => {
    const { room, meaning, diffuseFrom_Hz } = roomModes(floor, bands_Hz);
    expect(room).toEqual({ length_m: 5, width_m: 4, height_m: 2.5 });
    expect(meaning.slice(0, 3)).toEqual(['no-modes', 'no-modes', 'few-modes']);
    expect(meaning[bands_Hz.indexOf(diffuseFrom_Hz!) - 1]).not.toBe('diffuse');
    expect(meaning.slice(bands_Hz.indexOf(diffuseFrom_Hz!)).every((m) => m === 'diffuse')).toBe(true);
  });

  test('the volume that is asked for stands on the floor’s sides', () => {
    const { room } = roomModes(floor, bands_Hz, { receivingVolume_m3: 60, reverberationTime_s: 0.5 });
    expect(room).toEqual({ length_m: 5, width_m: 4, height_m: 3 });
  });

  test('a hall beyond all halls is answered at once, without counting its modes one by one', () => {
    const { diffuseFrom_Hz } = roomModes(floor, bands_Hz, { receivingVolume_m3: 1e12, reverberationTime_s: 0.5 });
    expect(diffuseFrom_Hz).toBe(20);
  });

  test('a closet has modes across its height alone, c/2h = 68.6 Hz and up', () => {
    const { meaning } = roomModes(floor, bands_Hz, { receivingVolume_m3: 1e-6, reverberationTime_s: 0.5 });
    expect(meaning.indexOf('few-modes')).toBe(bands_Hz.indexOf(63));
    expect(meaning.slice(0, 5)).toEqual(Array(5).fill('no-modes'));
  });
});
