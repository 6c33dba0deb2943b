/** Nodes and weights of Gauss–Legendre quadrature on −1…1. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

const cache: (QuadratureRule | undefined)[] = [];

/**
 * The rule with `count` points, exact for polynomials up to degree 2·count − 1; kept for the next call.
 *
 * Source: Newton's iteration on the Legendre recurrence, Abramowitz & Stegun, 1964, 25.4.29 and 22.7.10.
 */
export function gaussLegendre(count: number): QuadratureRule {
  const known = cache[count];
  if (known) return known;
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let iteration = 0; iteration < 20; iteration++) {
      let previous = 1;
      let value = x;
      for (let degree = 2; degree <= count; degree++) {
        const next = ((2 * degree - 1) * x * value - (degree - 1) * previous) / degree;
        previous = value;
        value = next;
      }
      slope = (count * (x * value - previous)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    nodes[i] = -x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = { nodes, weights };
  cache[count] = rule;
  return rule;
}
