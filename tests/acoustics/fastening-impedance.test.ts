import { describe, expect, it } from 'vitest';
import { fasteningMobility, infinitePlateMobility } from '#src/acoustics/fastening-impedance.ts';

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

  const LATTICES = [
    [0.406, 0.305],
    [0.305, 0.406],
    [0.61, 1.22],
    [0.406, 10],
  ] as const;
  it.each(LATTICES.flatMap((lattice) => [30, 150, 600, 3000].map((f) => [...lattice, f] as const)))(
    'equals the double sum over a lattice of %d m × %d m, term by term, at %d Hz',
    (b, l, f) => {
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
          const dRe = B * g2 * g2 - omega * omega * m;
          const dIm = B * eta * g2 * g2;
          const size = dRe * dRe + dIm * dIm;
          re += dRe / size;
          im -= dIm / size;
        }
      }
      const found = fasteningMobility({ line_m: b, point_m: l }, B, m, eta, omega, { re: 0, im: 0 });
      const scale = Math.hypot(re, im) * omega;
      expect(Math.hypot(found.re + omega * im, found.im - omega * re) / scale).toBeLessThan(0.0015);
    },
  );
});
