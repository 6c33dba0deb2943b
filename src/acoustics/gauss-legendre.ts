/** Nodes and weights of Gauss–Legendre quadrature on −1…1. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** The same, and what tells how far the points see into a function. */
export interface GaussRule extends QuadratureRule {
  /**
   * (2n+1) P_n at the nodes, of the two highest degrees that the points resolve, count − 1 and count − 2, from 2 points on:
   * with the weights and values of a function, its Legendre coefficients against the mean.
   */
  readonly highest: Float64Array;
  readonly second: Float64Array;
}

const cache: (GaussRule | undefined)[] = [];

/**
 * The rule with `count` points, exact for polynomials up to degree 2·count − 1; kept for the next call.
 *
 * Source: Newton's iteration on the Legendre recurrence, Abramowitz & Stegun, 1964, 25.4.29 and 22.7.10.
 */
export function gaussLegendre(count: number): GaussRule {
  const known = cache[count];
  if (known) return known;
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let iteration = 0; iteration < 20; iteration++) {
      const value = legendre(count, x);
      slope = (count * (x * value - legendre(count - 1, x))) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    nodes[i] = -x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = {
    nodes,
    weights,
    highest: nodes.map((x) => (2 * count - 1) * legendre(count - 1, x)),
    second: nodes.map((x) => (2 * count - 3) * legendre(Math.max(count - 2, 0), x)),
  };
  cache[count] = rule;
  return rule;
}

function legendre(degree: number, x: number): number {
  let previous = 0;
  let value = 1;
  for (let n = 1; n <= degree; n++) {
    const next = ((2 * n - 1) * x * value - (n - 1) * previous) / n;
    previous = value;
    value = next;
  }
  return value;
}
