import { describe, expect, it } from 'vitest';
import { audibility, hearingThreshold_dB } from '#src/acoustics/ratings/audibility.ts';

describe('audibility', () => {
  it('ISO 389-7:2019 table 1: 26.5 dB at 100 Hz, 0.8 dB (free field 2.4 dB) at 1 kHz (from memory, unverified)', () => {
    expect(hearingThreshold_dB([100, 1000])).toEqual([26.5, 0.8]);
    expect(hearingThreshold_dB([1000, 1001], 'free')).toEqual([2.4, NaN]);
  });

  it('compares with the higher of threshold and background', () => {
    const heard = audibility([50, 100, 500], [40, 30, 30], [20, 28, 35]);
    expect(heard).toEqual([
      { band_Hz: 50, excess_dB: -4, hiddenBy: 'threshold' },
      { band_Hz: 100, excess_dB: 2, hiddenBy: undefined },
      { band_Hz: 500, excess_dB: -5, hiddenBy: 'background' },
    ]);
  });

  it('in silence only the threshold counts; a gap stays a gap', () => {
    const [low, gap] = audibility([100, 125], [20, NaN]);
    expect(low).toMatchObject({ excess_dB: -6.5, hiddenBy: 'threshold' });
    expect(gap!.excess_dB).toBeNaN();
    expect(gap!.hiddenBy).toBeUndefined();
    expect(audibility([100], [40], [])[0]!.excess_dB).toBeNaN();
  });
});
