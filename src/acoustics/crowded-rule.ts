import { gaussLegendre, type QuadratureRule } from './gauss-legendre.ts';

/** A crowded rule this long in t gets as many points as a plain one: the peak's poles lie π/2 off its axis. */
const REACH_PER_POINTS = 3;
const MOST_POINTS = 80;

/** Rules are kept for lengths in t rounded up to this step, so that no hyperbolic function is left to each call. */
const STEPS_PER_UNIT = 4;

const kept: (QuadratureRule | undefined)[][] = [];

/**
 * Nodes and weights on 0…1, crowded to 0, for an integrand that peaks there over `width`: x = sinh(tT)/sinh T with
 * Gauss–Legendre points in t, T = asinh(1/width), and so many more points than `points` as T is long.
 */
export function crowdedRule(width: number, points: number): QuadratureRule {
  const steps = Math.ceil(Math.asinh(1 / width) * STEPS_PER_UNIT);
  let ofPoints = kept[points];
  if (!ofPoints) kept[points] = ofPoints = [];
  let rule = ofPoints[steps];
  if (!rule) ofPoints[steps] = rule = makeRule(steps / STEPS_PER_UNIT, points);
  return rule;
}

function makeRule(reach: number, points: number): QuadratureRule {
  const count = Math.min(Math.ceil((points * reach) / REACH_PER_POINTS) + 1, MOST_POINTS);
  const { nodes, weights } = gaussLegendre(count);
  const whole = Math.sinh(reach);
  return {
    nodes: nodes.map((t) => Math.sinh((reach * (t + 1)) / 2) / whole),
    weights: weights.map((weight, j) => (Math.cosh((reach * (nodes[j]! + 1)) / 2) * reach * weight) / (2 * whole)),
  };
}
