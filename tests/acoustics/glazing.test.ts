import { describe, expect, it } from 'vitest';
import type { Construction, ConstructionLayer } from '#src/acoustics/construction.ts';
import { predict } from '#src/acoustics/predict.ts';
import { cavity, leaf, sheet } from '../published/reference-constructions.ts';

/** A window of the size that ISO 10140 tests, 1.5 m × 1.25 m, of panes and the gaps between them in mm. */
function window_mm(...thicknesses: number[]): Construction {
  const layers = thicknesses.map((mm, i): ConstructionLayer => {
    if (i % 2 === 0) return leaf([sheet('glass', mm / 1000)]);
    return cavity({ joists: 'none', support: 'direct', depth_m: mm / 1000 });
  });
  return { length_m: 1.5, width_m: 1.25, layers };
}

// EN 12758:2011, table of typical glass products (from memory).
describe('panes of glass', () => {
  it.each([
    [4, 29],
    [6, 31],
    [10, 33],
    [12, 34],
  ])('of %d mm have the Rw of EN 12758, %d dB, within 1 dB', (thickness_mm, Rw) => {
    expect(Math.abs(predict(window_mm(thickness_mm)).ratings.Rw - Rw)).toBeLessThanOrEqual(1);
  });

  // `openCavityEdgeAbsorption` is set to these; with air as lossy as between joists they would be 9 to 13 dB too good.
  it.each([
    [4, 4, 29],
    [6, 4, 32],
    [6, 6, 31],
    [10, 6, 35],
  ])('of %d and %d mm with 12 mm between have the Rw of EN 12758, %d dB, within 1 dB', (outer_mm, inner_mm, Rw) => {
    expect(Math.abs(predict(window_mm(outer_mm, 12, inner_mm)).ratings.Rw - Rw)).toBeLessThanOrEqual(1);
  });

  it('of 6 and 3 mm with 50 mm between have STC 39 within 3 points (Egan, Architectural Acoustics, 1988; from memory)', () => {
    expect(Math.abs(predict(window_mm(6, 50, 3)).ratings.STC - 39)).toBeLessThanOrEqual(3);
  });

  it('joined by 12 mm of air pass most in the octave of their resonance, 250 Hz (EN 12758: 4-12-4 mm)', () => {
    const { bands_Hz, R_dB } = predict(window_mm(4, 12, 4));
    const from125to1000 = bands_Hz.map((f, i) => ({ f, R: R_dB[i]! })).filter(({ f }) => f >= 125 && f <= 1000);
    const weakest = from125to1000.reduce((a, b) => (b.R < a.R ? b : a));
    expect(weakest.f).toBeGreaterThanOrEqual(200);
    expect(weakest.f).toBeLessThanOrEqual(315);
  });
});
