import fc from 'fast-check';
import { expect, it } from 'vitest';
import { FastWaves } from '#src/acoustics/fast-waves.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { quadratureFor } from '#src/acoustics/quadrature.ts';
import { SlowWaves } from '#src/acoustics/slow-waves.ts';
import { floors } from './floors.ts';

/** So many plain points, evenly in ln r: knows nothing of any peak, kink or end. */
const POINTS = 400_000;
const LEAST = 1e-5;
const MOST = 1e4;

it('struck floors radiate by slow waves what a plain sum of 400 000 points says, to 0.1 dB, whatever is accepted', () => {
  const step = Math.log(MOST / LEAST) / POINTS;
  const r = Float64Array.from({ length: POINTS }, (_, k) => LEAST * Math.exp((k + 0.5) * step));
  const each = new Float64Array(POINTS);
  const errors = fc
    .sample(fc.tuple(floors('accepted', 2), fc.constantFrom(50, 230, 1100, 4700)), { numRuns: 60, seed: 7 })
    .map(([floor, f_Hz]) => {
      const model = floorModel(floor, MODEL_CONSTANTS);
      const quadrature = quadratureFor(floor);
      const waves = new FastWaves(model, quadrature, false);
      const slow = new SlowWaves(model, quadrature);
      waves.prepare(f_Hz, 1);
      waves.sum(0);
      const fast = waves.struck.radiated;
      const own = slow.radiated(f_Hz, waves, 0);
      slow.evaluate(r, POINTS, each);
      let plain = 0;
      for (let k = 0; k < POINTS; k++) plain += each[k]! * r[k]! * step;
      return Math.abs(10 * Math.log10((own + fast) / (plain + fast)));
    });
  expect(Math.max(...errors)).toBeLessThan(0.1);
}, 120_000);
