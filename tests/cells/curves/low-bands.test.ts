import { expect, test } from 'vitest';
import { lowBands } from '#cells/curves/low-bands.ts';
import { nominalBandsFrom } from '#src/acoustics/third-octave-bands.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { isolated, limp } from '../../acoustics/fixtures.ts';
import { practiceRoom } from '../../browser/practice-room.ts';
import { leaf } from '../../published/reference-constructions.ts';

const BANDS_HZ = nominalBandsFrom(20);
const floor = { ...isolated(leaf([limp(20)])), length_m: 6, width_m: 4.2 };

function withVolume(receivingVolume_m3: number): Notebook {
  const room = practiceRoom();
  return { ...room, cells: room.cells.map((c) => (c.kind === 'ratings' ? { ...c, receivingVolume_m3 } : c)) };
}

test('in a room of 63 m³ bands below about 100 Hz hold fewer than five modes, and a hall moves the limit down', () => {
  const [small] = lowBands(withVolume(63), 'floor', () => floor, BANDS_HZ);
  const [hall] = lowBands(withVolume(300), 'floor', () => floor, BANDS_HZ);
  // 4πV/3 · (f2³ − f1³)/c³ with the terms of faces and edges (Kuttruff, Room Acoustics, ch. 3): 4.6 at 80 Hz, 8 at 100 Hz
  expect(small!.below_Hz).toBeGreaterThanOrEqual(80);
  expect(small!.below_Hz).toBeLessThanOrEqual(125);
  expect(hall!.below_Hz).toBeLessThan(small!.below_Hz);
  expect(small!.description).toBe(
    `below the ${small!.below_Hz} Hz band fewer than five modes a band in a room of 63 m³: the level depends on the place`,
  );
});

test('a room that nobody stated is assumed, and the sentence says so', () => {
  const [region] = lowBands(practiceRoom(), 'floor', () => floor, BANDS_HZ);
  expect(region!.description).toContain('63 m³ (assumed');
});

test('nothing is shaded where every band has modes enough, all where none has', () => {
  expect(lowBands(withVolume(63), 'floor', () => floor, nominalBandsFrom(20).slice(12))).toEqual([]);
  expect(lowBands(withVolume(100_000), 'floor', () => floor, BANDS_HZ)).toEqual([]);
  const [all] = lowBands(withVolume(1), 'floor', () => floor, BANDS_HZ.slice(0, 5));
  expect(all!.below_Hz).toBe(Infinity);
  expect(all!.description).toContain('fewer than five modes in every band in a room of 1 m³');
});

test('a floor that cannot be resolved has no region', () => {
  const broken = () => {
    throw new RangeError('parameter must be one of the notebook’s');
  };
  expect(lowBands(practiceRoom(), 'floor', broken, BANDS_HZ)).toEqual([]);
});
