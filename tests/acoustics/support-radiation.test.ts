import { describe, expect, it } from 'vitest';
import { infinitePlateMobility, type Lattice } from '#src/acoustics/fastening-impedance.ts';
import { type FloorModel, floorModel } from '#src/acoustics/floor-model.ts';
import { MODEL_CONSTANTS } from '#src/acoustics/model-constants.ts';
import { resonantRadiation } from '#src/acoustics/resonant-radiation.ts';
import { supportRadiation } from '#src/acoustics/support-radiation.ts';
import { cavity, leaf, sheet } from '../published/reference-constructions.ts';
import { dB, isolated } from './fixtures.ts';

const RHO = 1.204;
const C = 343.2;

/** The lower leaf: 12.7 mm gypsum board in numbers of its own. */
const B = 394;
const m = 8.89;
const ETA = 0.01;
const FC_HZ = (C * C * Math.sqrt(m / B)) / (2 * Math.PI);

/** Fastenings so far from each other that each acts alone. */
const FAR_LINES: Lattice = { line_m: 3, point_m: Infinity };
const FAR_POINTS: Lattice = { line_m: 3, point_m: 3 };

/** V(k) of the unbounded plate per force of wave number k: jω/(B(1 + jη)k⁴ − ω²m). */
function velocityPerForce(k: number, omega: number): { re: number; im: number } {
  const re = B * k ** 4 - omega * omega * m;
  const im = B * ETA * k ** 4;
  const size = re * re + im * im;
  return { re: (omega * im) / size, im: (omega * re) / size };
}

/** Midpoints, as many as it takes: a peak of half-width ηk/4 and the pole of 1/√(k0² − k²) at the end of the interval. */
function plainSum(to: number, f: (k: number) => number, points = 400_000): number {
  const step = to / points;
  let sum = 0;
  for (let i = 0; i < points; i++) sum += f((i + 0.5) * step);
  return sum * step;
}

/** Power of an unbounded plate driven with 1 N along a line, per metre, or at a point, into the room below. */
function radiatedFromPlate(drive: 'line' | 'point', f_Hz: number): number {
  const omega = 2 * Math.PI * f_Hz;
  const k0 = omega / C;
  return plainSum(k0, (k) => {
    const { re, im } = velocityPerForce(k, omega);
    const waves = drive === 'line' ? 1 / Math.PI : k / (2 * Math.PI);
    return (((re * re + im * im) * RHO * C * k0) / Math.sqrt(k0 * k0 - k * k)) * waves;
  });
}

/** Velocity at the drive per 1 N along a line, per metre, or at a point: the plate's mobility. */
function mobilityOfPlate(drive: 'line' | 'point', f_Hz: number): { re: number; im: number } {
  const omega = 2 * Math.PI * f_Hz;
  const kB = (omega * omega * (m / B)) ** 0.25;
  const waves = (k: number) => (drive === 'line' ? 1 / Math.PI : k / (2 * Math.PI));
  const part = (of: 're' | 'im') => plainSum(60 * kB, (k) => velocityPerForce(k, omega)[of] * waves(k));
  return { re: part('re'), im: part('im') };
}

function model(weights: { nearFieldWeight: number; reverberantWeight: number }): FloorModel {
  const nu = 0.3;
  const thickness_m = 0.0127;
  const board = sheet('gypsum-board', thickness_m, {
    density_kg_m3: m / thickness_m,
    youngsModulus_Pa: (12 * B * (1 - nu * nu)) / thickness_m ** 3,
    poissonRatio: nu,
  });
  const floor = isolated(leaf([sheet('osb', 0.018)]), cavity({ support: 'resilient-channel' }), leaf([board]));
  return floorModel(floor, { ...MODEL_CONSTANTS, ...weights });
}

const states = [0, 1].map(() => ({ bending_Nm: B, lossFactor: ETA }));

/** Force per line or point for 1 N/m² on average, squared, times how many there are per m² of floor. */
const PER_AREA = { line: FAR_LINES.line_m, point: FAR_POINTS.line_m * FAR_POINTS.point_m };

describe.each(['line', 'point'] as const)(
  'a %s of fastening against a sum over the wave numbers of an unbounded plate',
  (drive) => {
    const lattice = drive === 'line' ? FAR_LINES : FAR_POINTS;

    it.each([
      [4, 0.35],
      [8, 0.1],
      [16, 0.1],
    ] as const)('its near field radiates what is faster than sound, at 1/%d of fc within %d dB', (below, within_dB) => {
      const f_Hz = FC_HZ / below;
      const found = supportRadiation(model({ nearFieldWeight: 1, reverberantWeight: 0 }), 1, states, lattice, f_Hz);
      expect(Math.abs(dB(found / (PER_AREA[drive] * radiatedFromPlate(drive, f_Hz))))).toBeLessThan(within_dB);
    });

    it('its near field goes on with its weight, and vanishes above fc, where the reverberant field holds it', () => {
      const near = (f_Hz: number, nearFieldWeight: number) =>
        supportRadiation(model({ nearFieldWeight, reverberantWeight: 0 }), 1, states, lattice, f_Hz);
      expect(near(500, 0.5) / near(500, 1)).toBeCloseTo(0.5, 12);
      expect(near(4 * FC_HZ, 1) / near(FC_HZ / 4, 1)).toBeLessThan(0.01);
    });

    it.each([250, 1000, 4000])('its reverberant field is fed with Re Y of that sum, at %d Hz', (f_Hz) => {
      const floor = model({ nearFieldWeight: 0, reverberantWeight: 1 });
      const found = supportRadiation(floor, 1, states, lattice, f_Hz);
      const velocity2 = (PER_AREA[drive] * mobilityOfPlate(drive, f_Hz).re) / (2 * Math.PI * f_Hz * ETA * m);
      const sigma = resonantRadiation(f_Hz, FC_HZ, floor.leafEdges[1]!, C);
      expect(Math.abs(dB(found / (velocity2 * RHO * C * sigma)))).toBeLessThan(0.05);
    });

    it.each([250, 1000, 4000])('the mobility there is that of the sum, at %d Hz, within a hundredth', (f_Hz) => {
      const found = infinitePlateMobility(lattice, B, m, 2 * Math.PI * f_Hz, { re: 0, im: 0 });
      const summed = mobilityOfPlate(drive, f_Hz);
      const size = Math.hypot(summed.re, summed.im);
      expect(Math.abs(found.re / PER_AREA[drive] - summed.re) / size).toBeLessThan(0.01);
      expect(Math.abs(found.im / PER_AREA[drive] - summed.im) / size).toBeLessThan(0.01);
    });
  },
);
