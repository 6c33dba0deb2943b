import { describe, expect, it } from 'vitest';
import { fasteningMobility, infinitePlateMobility, restingGive_m3_N } from '#src/acoustics/fastening-impedance.ts';

/** 12.7 mm gypsum board. */
const B = 394;
const m = 8.89;

describe('impedance of a leaf at its fastenings', () => {
  it('is the clamped strip at rest for lines: jωK → 720 B/b⁴ (closed form)', () => {
    const omega = 2 * Math.PI * 1;
    const { re, im } = fasteningMobility({ line_m: 0.4, point_m: Infinity }, B, m, 1e-6, omega, { re: 0, im: 0 });
    // 1/K = jω b⁴/720B
    expect((im / omega) * ((720 * B) / 0.4 ** 4)).toBeCloseTo(1, 4);
    expect(Math.abs(re / im)).toBeLessThan(1e-3);
  });

  it('is 2(1+j) m c_B/b of the unbounded plate for lines at high frequency', () => {
    const omega = 2 * Math.PI * 20000;
    const lattice = { line_m: 2, point_m: Infinity };
    const framed = fasteningMobility(lattice, B, m, 0.06, omega, { re: 0, im: 0 });
    const speed = ((B * omega * omega) / m) ** 0.25;
    const expected = 2 / (4 * m * speed);
    expect(framed.re / expected).toBeCloseTo(1, 1);
    expect(framed.im / expected).toBeCloseTo(-1, 0.8);
  });

  it('is n · 8√(Bm) of the unbounded plate for points at high frequency', () => {
    const omega = 2 * Math.PI * 5000;
    const lattice = { line_m: 1.2, point_m: 1.2 };
    const { re } = fasteningMobility(lattice, B, m, 0.3, omega, { re: 0, im: 0 });
    expect((re * 8 * Math.sqrt(B * m)) / 1.44).toBeCloseTo(1, 0.7);
    const infinite = infinitePlateMobility(lattice, B, m, omega, { re: 0, im: 0 });
    expect((infinite.re * 8 * Math.sqrt(B * m)) / 1.44).toBeCloseTo(1, 2);
  });

  // The last number stiffens the lines, N·m²; 850 is furring channel.
  const LATTICES = [
    [0.406, 0.305, 0],
    [0.305, 0.406, 0],
    [0.61, 1.22, 0],
    [0.406, 10, 0],
    [0.61, 1.22, 850],
    [0.61, 0.61, 1e4],
    [1.22, 0.61, 50],
  ] as const;
  it.each(LATTICES.flatMap((lattice) => [30, 150, 600, 3000].map((f) => [...lattice, f] as const)))(
    'equals the double sum over a lattice of %d m × %d m, its lines stiffened by %d N·m², term by term, at %d Hz',
    (b, l, stiffer_Nm2, f) => {
      const lattice = { line_m: b, point_m: l, lineBending_Nm2: stiffer_Nm2 };
      const omega = 2 * Math.PI * f;
      const eta = 0.3;
      // As far in wave number both ways.
      const terms = [b, l].map((side) => Math.ceil(400 * (side / 0.406)));
      let re = 0;
      let im = 0;
      for (let mu = -terms[0]!; mu <= terms[0]!; mu++) {
        for (let nu = -terms[1]!; nu <= terms[1]!; nu++) {
          if (mu === 0 && nu === 0) continue;
          const g2 = (2 * Math.PI) ** 2 * ((mu / b) ** 2 + (nu / l) ** 2);
          const along = (2 * Math.PI * nu) / l;
          const stiffness = B * g2 * g2 + (stiffer_Nm2 / b) * along ** 4;
          const dRe = stiffness - omega * omega * m;
          const dIm = eta * stiffness;
          const size = dRe * dRe + dIm * dIm;
          re += dRe / size;
          im -= dIm / size;
        }
      }
      const found = fasteningMobility(lattice, B, m, eta, omega, { re: 0, im: 0 });
      const scale = Math.hypot(re, im) * omega;
      expect(Math.hypot(found.re + omega * im, found.im - omega * re) / scale).toBeLessThan(0.0015);
    },
  );

  it('gives at rest as a clamped strip between lines, and on a square lattice as Σ 1/Bγ⁴ says (6.027 a⁴/(2π)⁴B)', () => {
    expect(restingGive_m3_N({ line_m: 0.4, point_m: Infinity }, B) / (0.4 ** 4 / (720 * B))).toBeCloseTo(1, 4);
    // Σ (μ² + ν²)⁻² without (0,0) = 4 ζ(2) β(2), β(2) = 0.915966 (Catalan's constant).
    const sum = 4 * (Math.PI ** 2 / 6) * 0.915966;
    const expected = (sum * 0.6 ** 4) / ((2 * Math.PI) ** 4 * B);
    expect(restingGive_m3_N({ line_m: 0.6, point_m: 0.6 }, B) / expected).toBeCloseTo(1, 3);
  });

  it('is held by stiff lines as by lines fastened all along, and gives less the stiffer they are', () => {
    const give = (lineBending_Nm2: number) => restingGive_m3_N({ line_m: 0.61, point_m: 1.22, lineBending_Nm2 }, B);
    expect(give(0)).toBeGreaterThan(give(850));
    expect(give(1e9) / restingGive_m3_N({ line_m: 0.61, point_m: Infinity }, B)).toBeCloseTo(1, 3);
  });
});
