import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Construction } from '#src/acoustics/construction.ts';
import { FastWaves } from '#src/acoustics/fast-waves.ts';
import { floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { quadratureFor } from '#src/acoustics/quadrature.ts';
import { SlowWaves } from '#src/acoustics/slow-waves.ts';
import { floors, logUniform } from './floors.ts';

/** So many plain points, evenly in ln r: knows nothing of any peak, kink or end. */
const POINTS = 400_000;
const LEAST = 1e-5;
const MOST = 1e4;
const STEP = Math.log(MOST / LEAST) / POINTS;
const r = Float64Array.from({ length: POINTS }, (_, k) => LEAST * Math.exp((k + 0.5) * STEP));
const each = new Float64Array(POINTS);

/** What the sum over slow waves is off by, against a plain one, of all that the struck floor radiates, dB. */
function off_dB(floor: Construction, f_Hz: number): number {
  const model = floorModel(floor, MODEL_CONSTANTS);
  const quadrature = quadratureFor(model);
  const waves = new FastWaves(model, quadrature, false);
  const slow = new SlowWaves(model, quadrature);
  waves.prepare(f_Hz, 1);
  waves.sum(0);
  const fast = waves.struck.radiated;
  const own = slow.radiated(f_Hz, waves, 0);
  slow.evaluate(r, POINTS, each);
  let plain = 0;
  for (let k = 0; k < POINTS; k++) plain += each[k]! * r[k]! * STEP;
  return Math.abs(10 * Math.log10((own + fast) / (plain + fast)));
}

const frequencies_Hz = fc.constantFrom(50, 230, 1100, 4700);

/** Leaves on a millimetre to a centimetre of air, a stiff spring. */
const thinGaps = fc.tuple(floors('real', 2), logUniform(0.001, 0.01)).map(
  ([floor, depth_m]): Construction => ({
    ...floor,
    layers: floor.layers.map((layer) =>
      layer.kind === 'cavity' ? { ...layer, joists: 'none', support: 'direct', fill: [], depth_m } : layer,
    ),
  }),
);

it.each([
  ['anything accepted', floors('accepted', 2), 60],
  ['anything accepted of up to three leaves', floors('accepted', 3), 60],
  ['leaves with a thin gap', thinGaps, 40],
] as const)(
  '%s radiates by slow waves what a plain sum of 400 000 points says, to 0.1 dB',
  (_, all, numRuns) => {
    const errors = fc.sample(fc.tuple(all, frequencies_Hz), { numRuns, seed: 7 }).map(([f, f_Hz]) => off_dB(f, f_Hz));
    expect(Math.max(...errors)).toBeLessThan(0.1);
  },
  120_000,
);
