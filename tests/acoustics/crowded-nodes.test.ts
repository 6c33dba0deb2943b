import { describe, expect, it } from 'vitest';
import { CrowdedNodes } from '#src/acoustics/crowded-nodes.ts';
import { gaussLegendre } from '#src/acoustics/gauss-legendre.ts';
import { tridiagonalEigenvalue } from '#src/acoustics/tridiagonal.ts';

function integral(nodes: CrowdedNodes, f: (x: number) => number): number {
  let sum = 0;
  for (let i = 0; i < nodes.count; i++) sum += nodes.weight[i]! * f(nodes.x[i]!);
  return sum;
}

describe('Gauss–Legendre', () => {
  it('has the nodes and weights of Abramowitz & Stegun table 25.4 for n = 5', () => {
    const { nodes, weights } = gaussLegendre(5);
    expect([...nodes].map((x) => Number(x.toFixed(12)))).toEqual(
      [-0.906179845939, -0.538469310106, 0, 0.538469310106, 0.906179845939].map((x) => expect.closeTo(x, 11)),
    );
    expect([...weights]).toEqual(
      [0.23692688505619, 0.47862867049937, 0.56888888888889, 0.47862867049937, 0.23692688505619].map((w) =>
        expect.closeTo(w, 12),
      ),
    );
  });
});

describe('crowded nodes', () => {
  it('have weights that sum to the interval, peaks or not', () => {
    const nodes = new CrowdedNodes().begin().breakAt(2, Infinity).breakAt(-1, Infinity).breakAt(0.3, 1e-3).fill(6);
    expect(integral(nodes, () => 1)).toBeCloseTo(3, 4);
  });

  it.each([1e-1, 1e-2, 1e-4])('integrate a peak of half-width %d to 1e-3 with a few dozen points', (w) => {
    const nodes = new CrowdedNodes().begin().breakAt(0, Infinity).breakAt(0.4, w).breakAt(1, Infinity).fill(6);
    const exact = (Math.atan(0.6 / w) + Math.atan(0.4 / w)) * w;
    expect(integral(nodes, (x) => (w * w) / ((x - 0.4) ** 2 + w * w)) / exact).toBeCloseTo(1, 3);
    expect(nodes.count).toBeLessThan(60);
  });

  it('keep every breakpoint, the interval’s end too, however many there are', () => {
    const nodes = new CrowdedNodes().begin();
    for (let j = 0; j < 200; j++) nodes.breakAt(j / 200, Infinity);
    nodes.breakAt(1, Infinity).fill(2);
    expect(nodes.pieceCount).toBe(200);
    expect(nodes.weight.subarray(0, nodes.count).reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 12);
  });

  it('join breakpoints at one place and keep the narrower width', () => {
    const once = new CrowdedNodes().begin().breakAt(0, Infinity).breakAt(1, 0.01).fill(5);
    const twice = new CrowdedNodes().begin().breakAt(0, Infinity).breakAt(1, 0.01).breakAt(1, Infinity).fill(5);
    expect(twice.count).toBe(once.count);
  });
});

it('eigenvalues of the chain 2, −1 are 2 − 2 cos(kπ/(n+1)) (closed form)', () => {
  const n = 6;
  const diagonal = new Array(n).fill(2);
  const beside = new Array(n - 1).fill(-1);
  for (let k = 1; k <= n; k++) {
    expect(tridiagonalEigenvalue(diagonal, beside, k - 1)).toBeCloseTo(2 - 2 * Math.cos((k * Math.PI) / (n + 1)), 9);
  }
});
