import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import type { Leak } from '#src/acoustics/construction.ts';
import { leakArea_m2 } from '#src/acoustics/leak-area.ts';
import { OpenLeak } from '#src/acoustics/leaks.ts';

const { soundSpeed_m_s, density_kg_m3, viscosity_Pa_s } = ROOM_AIR;
const Z0 = density_kg_m3 * soundSpeed_m_s;
const WITHOUT_FRICTION = { ...ROOM_AIR, viscosity_Pa_s: 1e-14 };
const wave = (f_Hz: number) => (2 * Math.PI * f_Hz) / soundSpeed_m_s;
const open = (numbers: Omit<Leak, 'name'>, air = ROOM_AIR) => new OpenLeak({ name: 'leak', ...numbers }, air);
const decibels = (ratio: number) => 10 * Math.log10(ratio);

/** Gomperts & Kihlman, Acustica 18, 1967, with m = 8 and n = 1 (from memory). */
function gompertsKihlman(f_Hz: number, width_m: number, depth_m: number): number {
  const K = wave(f_Hz) * width_m;
  const X = depth_m / width_m;
  const e = (Math.log(8 / K) - 0.57722) / Math.PI;
  const length = K * (X + 2 * e);
  const resistance = ((K * K) / 2) * (1 + Math.cos(length) * Math.cos(K * X));
  return (8 * K * Math.cos(K * e) ** 2) / (2 * (Math.sin(length) ** 2 + resistance));
}

/** A tube with flanged ends, each with resistance (ka)²/2 and end correction 0.85 a (textbook). */
function flangedTube(f_Hz: number, radius_m: number, depth_m: number): number {
  const k = wave(f_Hz);
  const ka2 = (k * radius_m) ** 2;
  const length = k * (depth_m + 2 * 0.85 * radius_m);
  return (4 * ka2) / (Math.sin(length) ** 2 + (ka2 * Math.cos(length)) ** 2);
}

const FREQUENCIES_Hz = Array.from({ length: 600 }, (_, i) => 20 * 250 ** (i / 599));

describe('openings in which friction says nothing', () => {
  it.each([
    [0.001, 0.1],
    [0.01, 0.1],
    [0.03, 0.05],
  ])(
    'slits %d m wide and %d m deep are those of Gomperts & Kihlman, within 0.3 dB up to K = 0.3',
    (width_m, depth_m) => {
      const slit = open({ width_m, length_m: 1000, depth_m }, WITHOUT_FRICTION);
      for (const f_Hz of FREQUENCIES_Hz.filter((f) => wave(f) * width_m < 0.3)) {
        const difference = decibels(slit.transmission(f_Hz) / gompertsKihlman(f_Hz, width_m, depth_m));
        expect(Math.abs(difference), `${f_Hz} Hz`).toBeLessThan(0.3);
      }
    },
  );

  it.each([
    [0.005, 0.3],
    [0.02, 0.1],
    [0.05, 0],
  ])(
    'holes of %d m diameter and %d m deep are tubes with flanged ends, within 0.5 dB up to ka = 0.2',
    (width_m, depth_m) => {
      const hole = open({ width_m, depth_m }, WITHOUT_FRICTION);
      for (const f_Hz of FREQUENCIES_Hz.filter((f) => wave(f) * width_m < 0.4)) {
        const difference = decibels(hole.transmission(f_Hz) / flangedTube(f_Hz, width_m / 2, depth_m));
        expect(Math.abs(difference), `${f_Hz} Hz`).toBeLessThan(0.5);
      }
    },
  );

  it('a small hole in a thin plate passes 1.4 of what falls on it: 4(ka)²/(k·1.7a)² (closed form)', () => {
    expect(open({ width_m: 0.01, depth_m: 0 }, WITHOUT_FRICTION).transmission(100)).toBeCloseTo(4 / 1.7 ** 2, 2);
  });

  it('friction takes less the wider they are: of slits of 0.5, 2 and 10 mm at their first resonance, falling', () => {
    const lost = [0.0005, 0.002, 0.01].map((width_m) => {
      const numbers = { width_m, length_m: 2, depth_m: 0.1 };
      const top = (air: typeof ROOM_AIR) =>
        Math.max(...FREQUENCIES_Hz.filter((f) => f > 1000 && f < 2000).map((f) => open(numbers, air).transmission(f)));
      return decibels(top(WITHOUT_FRICTION) / top(ROOM_AIR));
    });
    expect(lost[0]).toBeGreaterThan(lost[1]!);
    expect(lost[1]).toBeGreaterThan(lost[2]!);
    expect(lost[2]).toBeGreaterThan(0);
    expect(lost[2]).toBeLessThan(1);
  });
});

describe('very narrow openings', () => {
  it.each([
    // Depth and the flow through the mouths as through a thin plate: Hasimoto 1958, 32 η/(πw), Sampson 1891, 3πη/a (from memory).
    ['slit', 0.01],
    ['slit', 0],
    ['hole', 0.01],
    ['hole', 0],
  ] as const)('a %s %d m deep resists as steady flow, 12 ηL/w² or 8 ηL/a², and at its mouths', (kind, depth_m) => {
    const f_Hz = 20;
    const width_m = depth_m > 0 ? 5e-5 : 1e-6;
    const a = width_m / 2;
    const k = wave(f_Hz);
    const resistance =
      kind === 'slit'
        ? viscosity_Pa_s * ((12 * depth_m) / width_m ** 2 + 32 / (Math.PI * width_m))
        : viscosity_Pa_s * ((8 * depth_m) / a ** 2 + (3 * Math.PI) / a);
    // Mean of what a diffuse field presses and what radiates, 8 r ρ0c0/|…|²; the air's own mass beside friction is nothing.
    const r = kind === 'slit' ? (k * width_m) / 2 : (k * a) ** 2 / 2;
    const leak = open({ width_m, depth_m, ...(kind === 'slit' && { length_m: 1000 }) });
    expect(decibels(leak.transmission(f_Hz) / ((8 * r) / (resistance / Z0) ** 2))).toBeCloseTo(0, 1);
  });

  it('let hardly anything through: 0.02 mm, 3 m long and 0.1 m deep, 60 dB less than without friction', () => {
    const numbers = { width_m: 2e-5, length_m: 3, depth_m: 0.1 };
    for (const f_Hz of [50, 500, 5000]) {
      const ratio = open(numbers, WITHOUT_FRICTION).transmission(f_Hz) / open(numbers).transmission(f_Hz);
      expect(decibels(ratio)).toBeGreaterThan(60);
    }
  });
});

describe('wide openings', () => {
  it('pass what falls on them', () => {
    for (const f_Hz of [500, 1000, 5000]) {
      expect(decibels(open({ width_m: 2, length_m: 3, depth_m: 0.3 }).transmission(f_Hz))).toBeCloseTo(0, 0);
      expect(decibels(open({ width_m: 2, depth_m: 0.3 }).transmission(f_Hz))).toBeCloseTo(0, 0);
    }
  });
});

describe('short slits', () => {
  it('as wide as long pass what a round hole of their area does, within 1 dB off resonance', () => {
    for (const f_Hz of [50, 100, 200, 500, 1000]) {
      const square = open({ width_m: 0.02, length_m: 0.02, depth_m: 0.1 });
      const round = open({ width_m: 0.02 * Math.sqrt(4 / Math.PI), depth_m: 0.1 });
      expect(Math.abs(decibels(square.transmission(f_Hz) / round.transmission(f_Hz)))).toBeLessThan(1);
    }
  });

  it('are the same whichever side is called the length', () => {
    const [a, b] = [
      open({ width_m: 0.3, length_m: 0.01, depth_m: 0.1 }),
      open({ width_m: 0.01, length_m: 0.3, depth_m: 0.1 }),
    ];
    expect(a.transmission(700)).toBe(b.transmission(700));
  });

  it('radiate as their area at low frequency: half as long, half as much per area (reciprocity)', () => {
    const at = (length_m: number) => open({ width_m: 0.002, length_m, depth_m: 0.3 }).transmission(50);
    expect(at(0.2) / at(0.1)).toBeCloseTo(2, 1);
  });
});

it('without width or length, or narrower than molecules fly, a leak has no area', () => {
  for (const closed of [{ width_m: 0 }, { length_m: 0 }, { width_m: 5e-324 }]) {
    expect(leakArea_m2({ name: 'slit', width_m: 0.002, length_m: 3, depth_m: 0.1, ...closed })).toBe(0);
  }
  expect(leakArea_m2({ name: 'hole', width_m: 0, depth_m: 0.1 })).toBe(0);
});
