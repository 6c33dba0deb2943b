import { describe, expect, it } from 'vitest';
import { absorptionArea_m2, levelBelow_dB } from '#src/acoustics/level-below.ts';
import { fieldRatings } from '#src/acoustics/ratings/field-ratings.ts';

const rooms = { partitionArea_m2: 20, receivingVolume_m3: 50, reverberationTime_s: 0.5 };

describe('level in the room below', () => {
  it('own case by hand: 100 dB above, R 40, S 20 m², A = 0.16 · 50 / 0.5 = 16 m²: 60 + 10 lg 1.25 = 60.97 dB', () => {
    expect(absorptionArea_m2(rooms)).toBeCloseTo(16, 12);
    const [level] = levelBelow_dB([500], [40], { bands_Hz: [500], values_dB: [100] }, rooms);
    expect(level).toBeCloseTo(60.969, 3);
  });

  it('is what ASTM E336 calls noise reduction, but for 0.16 instead of 0.161 in the absorption (0.03 dB)', () => {
    const { noiseReduction } = fieldRatings({ bands_Hz: [100, 1000], R_dB: [30, 50] }, rooms);
    const levels = levelBelow_dB([100, 1000], [30, 50], { bands_Hz: [100, 1000], values_dB: [90, 80] }, rooms);
    [90, 80].forEach((above, i) => {
      expect(above - noiseReduction.values_dB[i]! - levels[i]!).toBeCloseTo(10 * Math.log10(0.16 / 0.161), 9);
    });
  });

  it('takes the source by its bands, whatever their order, and leaves a gap where there is none', () => {
    const above = { bands_Hz: [200, 100], values_dB: [70, 60] };
    const levels = levelBelow_dB([100, 125, 200], [30, 30, Number.NaN], above, { ...rooms, partitionArea_m2: 16 });
    expect(levels).toEqual([30, Number.NaN, Number.NaN]);
  });

  it('twice the reverberation is 3 dB more, twice the volume 3 dB less', () => {
    const above = { bands_Hz: [100], values_dB: [60] };
    const at = (r: typeof rooms) => levelBelow_dB([100], [30], above, r)[0]!;
    expect(at({ ...rooms, reverberationTime_s: 1 }) - at(rooms)).toBeCloseTo(3.0103, 4);
    expect(at({ ...rooms, receivingVolume_m3: 100 }) - at(rooms)).toBeCloseTo(-3.0103, 4);
  });

  it.each([{ receivingVolume_m3: 0 }, { receivingVolume_m3: -5 }, { reverberationTime_s: 0 }, { partitionArea_m2: 0 }])(
    'refuses %j',
    (wrong) => {
      const above = { bands_Hz: [100], values_dB: [60] };
      expect(() => levelBelow_dB([100], [30], above, { ...rooms, ...wrong })).toThrow(RangeError);
    },
  );
});
