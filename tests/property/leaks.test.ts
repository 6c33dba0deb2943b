import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import type { Construction, Leak } from '#src/acoustics/construction.ts';
import { leakArea_m2 } from '#src/acoustics/leak-area.ts';
import { meanTransmission } from '#src/acoustics/leak-bands.ts';
import { OpenLeak } from '#src/acoustics/leaks.ts';
import { predict } from '#src/acoustics/predict.ts';
import { exactBandOf } from '#src/acoustics/standards/iec-61260.ts';
import { nominalBandsFrom } from '#src/acoustics/third-octave-bands.ts';
import { leaf, sheet } from '../published/reference-constructions.ts';
import { ENOUGH_dB, floors, leaks, leakyFloors, logUniform } from './floors.ts';

const BANDS = nominalBandsFrom(20).map((band_Hz) => exactBandOf(band_Hz));

/** So many plain points in a band, evenly over ln f, see the narrowest resonance that friction allows. */
const DENSE = 20_000;

/** Of the leak's own area, per band. */
function denseTransmissions(leak: Leak, bands = BANDS, points = DENSE): number[] {
  const open = new OpenLeak(leak, ROOM_AIR);
  return bands.map(({ lower_Hz, upper_Hz }) => {
    const step = Math.log(upper_Hz / lower_Hz) / points;
    let sum = 0;
    for (let j = 0; j < points; j++) sum += open.transmission(lower_Hz * Math.exp((j + 0.5) * step));
    return sum / points;
  });
}

function transmissions(leak: Leak): number[] {
  const open = new OpenLeak(leak, ROOM_AIR);
  return BANDS.map(({ lower_Hz, upper_Hz }) => meanTransmission(open, lower_Hz, upper_Hz));
}

/** Less says nothing about anything: 300 dB. */
const NOTHING = 1e-30;

/** As large as a laboratory's. */
const FLOOR_m2 = 10;

const decibels = (ratio: number) => 10 * Math.log10(ratio);

describe('every leak the engine accepts', () => {
  it('is within 0.05 dB of a plain sum of 20 000 points in every band of up to 300 dB', () => {
    fc.assert(
      fc.property(
        leaks('accepted').filter((leak) => leakArea_m2(leak) > 0),
        (leak) => {
          const dense = denseTransmissions(leak);
          transmissions(leak).forEach((mean, i) => {
            if (dense[i]! > NOTHING)
              expect(Math.abs(decibels(mean / dense[i]!)), `${BANDS[i]!.middle_Hz} Hz`).toBeLessThan(0.05);
          });
        },
      ),
      { numRuns: 40, seed: 11, endOnFailure: true },
    );
  });

  it('gives finite levels in every band and path, or is no path at all', () => {
    fc.assert(
      fc.property(leakyFloors('accepted'), (floor) => {
        const { R_dB, Ln_dB, paths_dB } = predict(floor, { lowestBand_Hz: 20 });
        for (const levels of [R_dB, Ln_dB, ...Object.values(paths_dB)]) {
          for (const level of levels!) expect(Number.isFinite(level)).toBe(true);
        }
        expect(paths_dB.leaks !== undefined).toBe(floor.leaks!.some((leak) => leakArea_m2(leak) > 0));
      }),
      { numRuns: 100, seed: 12, endOnFailure: true },
    );
  });

  it('passes on no more than the floor gets', () => {
    fc.assert(
      fc.property(leakyFloors('accepted'), (floor) => {
        const { R_dB, paths_dB } = predict(floor);
        for (const R of [...R_dB, ...(paths_dB.leaks ?? [])]) expect(R).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 100, seed: 13, endOnFailure: true },
    );
  });

  it('draws no more from a wave than comes back to it: all that meets the mouths of an opening, 4π/k² at most', () => {
    fc.assert(
      fc.property(
        leaks('accepted').filter((leak) => leakArea_m2(leak) > 0),
        logUniform(20, 5000),
        (leak, f_Hz) => {
          const open = new OpenLeak(leak, ROOM_AIR);
          const k = (2 * Math.PI * f_Hz) / ROOM_AIR.soundSpeed_m_s;
          const waves = Math.hypot(open.area_m2, (4 * Math.PI) / k ** 2);
          const long = Math.max(leak.width_m, leak.length_m ?? 0);
          // A slit has room for more than one along its length.
          const along = leak.length_m === undefined ? 1 : (k * long) / Math.PI / Math.tanh((k * long) / Math.PI);
          expect(open.transmission(f_Hz) * open.area_m2).toBeLessThanOrEqual(waves * along * 1.000001);
        },
      ),
      { numRuns: 1000, seed: 14, endOnFailure: true },
    );
  });
});

describe('leaks that are found in floors', () => {
  it('change little with a small change of any number: 1 % moves 99 of 100 bands by less than 1 dB, none by 5', () => {
    // Most where a resonance crosses the sharp edge of a band.
    const moves: number[] = [];
    const drawn = fc.sample(fc.tuple(leaks('real'), fc.nat()), { numRuns: 1000, seed: 15 });
    for (const [leak, pick] of drawn) {
      const keys = (['width_m', 'depth_m', 'length_m'] as const).filter((key) => leak[key] !== undefined);
      const key = keys[pick % keys.length]!;
      const more = { ...leak, [key]: leak[key]! * 1.01 };
      const grown = leakArea_m2(more) / leakArea_m2(leak);
      const [before, after] = [transmissions(leak), transmissions(more)];
      before.forEach((tau, i) => {
        const isHeard = -decibels((tau * leakArea_m2(leak)) / FLOOR_m2) < ENOUGH_dB;
        if (isHeard) moves.push(Math.abs(decibels((after[i]! * grown) / tau)));
      });
    }
    moves.sort((a, b) => a - b);
    expect(moves[Math.floor(moves.length * 0.99)]).toBeLessThan(1);
    expect(moves.at(-1)).toBeLessThan(5);
  });

  it('add to the floor as they are, to 0.05 dB: slits of 1–10 mm in any floor that could be built', () => {
    const slit = fc.record({
      name: fc.constant('slit'),
      width_m: logUniform(0.001, 0.01),
      length_m: fc.constant(2),
      depth_m: logUniform(0.1, 0.4),
    });
    const drawn = fc.sample(fc.tuple(floors('real', 2), slit), { numRuns: 30, seed: 16 });
    for (const [tight, leak] of drawn) {
      const { R_dB, bands_Hz } = predict({ ...tight, leaks: [leak] });
      const closed = predict(tight);
      const share = leakArea_m2(leak) / (tight.length_m * tight.width_m);
      const dense = denseTransmissions(
        leak,
        bands_Hz.map((band_Hz) => exactBandOf(band_Hz)),
        5000,
      );
      R_dB.forEach((R, i) => {
        const tau = Math.min(10 ** (-closed.R_dB[i]! / 10) + Math.min(share * dense[i]!, 1), 1);
        expect(Math.abs(R + decibels(tau)), `${bands_Hz[i]} Hz`).toBeLessThan(0.05);
      });
    }
  });
});

it('a leak lets through the same whatever the floor around it is made of', () => {
  const floorOf = (thickness_m: number): Construction => ({
    length_m: 4,
    width_m: 3,
    layers: [leaf([sheet('concrete', thickness_m)])],
    leaks: [{ name: 'slit', width_m: 0.003, length_m: 2, depth_m: 0.3 }],
  });
  expect(predict(floorOf(0.1)).paths_dB.leaks).toEqual(predict(floorOf(0.13)).paths_dB.leaks);
});
