import { describe, expect, it } from 'vitest';
import { ForcedRadiation } from '#src/acoustics/forced-radiation.ts';
import { predict } from '#src/acoustics/predict.ts';
import { resonantRadiation } from '#src/acoustics/resonant-radiation.ts';
import { SlowWaveRadiation } from '#src/acoustics/slow-wave-radiation.ts';
import { leaf } from '../published/reference-constructions.ts';
import { isolated, limp } from './fixtures.ts';

const RHO = 1.204;
const C = 343.2;
const edges = { area_m2: 10, perimeter_m: 13, length_m: 4, width_m: 2.5 };

describe('forced radiation of a finite panel', () => {
  it('tends to 1/cosθ for a large one', () => {
    const radiation = new ForcedRadiation().prepare(200, 1e4, 400);
    for (const u of [0.2, 0.5, 1]) expect(radiation.at(u) * u).toBeCloseTo(1, 3);
  });

  it('never exceeds what a piston in a baffle radiates at low frequency by much: σ → k²S/2π', () => {
    const k = 0.05;
    const radiation = new ForcedRadiation().prepare(k, 10, 13);
    expect(radiation.at(1)).toBeLessThan(((k * k * 10) / (2 * Math.PI)) * 1.01);
  });

  it('gives a limp panel the field-incidence loss of Sewell, J. Sound Vib. 12, 1970: R0 − 10 lg[ln(k√S) + 0.16]', () => {
    // Heavy, so that the air's load on the panel, which Sewell leaves out, is small; square, as his formula assumes.
    const m = 200;
    const side = Math.sqrt(10);
    const { bands_Hz, R_dB } = predict({ ...isolated(leaf([limp(m)])), length_m: side, width_m: side });
    bands_Hz.forEach((nominal, i) => {
      if (nominal < 200) return;
      const f = 1000 * 10 ** (Math.round(10 * Math.log10(nominal / 1000)) / 10);
      const R0 = 20 * Math.log10((Math.PI * f * m) / (RHO * C));
      const sewell = R0 - 10 * Math.log10(Math.log(((2 * Math.PI * f) / C) * Math.sqrt(10)) + 0.16);
      expect(Math.abs(R_dB[i]! - sewell), `${nominal} Hz`).toBeLessThan(0.2);
    });
  });
});

describe('resonant radiation', () => {
  it('has the edge term of EN 12354-1 Annex B (Leppington 1982) as a function of wave number', () => {
    const fc = 2500;
    for (const f of [300, 800, 1200]) {
      const mu = Math.sqrt(fc / f);
      const lambda2 = f / fc;
      const lambda = Math.sqrt(lambda2);
      const delta1 =
        ((1 - lambda2) * Math.log((1 + lambda) / (1 - lambda)) + 2 * lambda) /
        (4 * Math.PI ** 2 * (1 - lambda2) ** 1.5);
      const expected = ((edges.perimeter_m * C) / (edges.area_m2 * fc)) * delta1;
      const slow = new SlowWaveRadiation().prepare((2 * Math.PI * f) / C, edges, 1e6);
      expect(slow.at(mu) / expected).toBeCloseTo(1, 10);
    }
  });

  it('of a slow wave stays at the grazing value up to the cap’s root, and falls below it beyond', () => {
    const slow = new SlowWaveRadiation().prepare((2 * Math.PI * 500) / C, edges, 0.4);
    const mu = (r: number) => Math.sqrt(1 + r * r);
    const root = slow.capRoot;
    expect(slow.at(mu(0.98 * root))).toBe(0.4);
    expect(slow.at(mu(1.02 * root))).toBeLessThan(0.4);
  });

  it('is 1/√(1 − fc/f) above the critical frequency and never above 2', () => {
    expect(resonantRadiation(4000, 2000, edges, C)).toBeCloseTo(Math.SQRT2, 12);
    for (let f = 20; f < 5000; f *= 1.02) expect(resonantRadiation(f, 1000, edges, C)).toBeLessThanOrEqual(2);
  });
});
