import { gaussLegendre, type QuadratureRule } from './gauss-legendre.ts';

/** A crowded rule this long in t gets as many points as a plain one: the peak's poles lie π/2 off its axis. */
const REACH_PER_POINTS = 3;
const MOST_POINTS = 80;

/** Rules are kept for lengths in t rounded up to this step, so that no hyperbolic function is left to each call. */
const STEPS_PER_UNIT = 4;

/** Nodes and weights on 0…1, crowded to 0. */
export interface CrowdedRule extends QuadratureRule {
  /** Length in t, T of x = sinh(tT)/sinh T. */
  readonly reach: number;
}

const kept: (CrowdedRule | undefined)[][] = [];

/**
 * For an integrand that peaks at 0 over `width`: x = sinh(tT)/sinh T with Gauss–Legendre points in t, T = asinh(1/width),
 * and so many more points than `points` as T is long.
 */
export function crowdedRule(width: number, points: number): CrowdedRule {
  const steps = Math.ceil(Math.asinh(1 / width) * STEPS_PER_UNIT);
  const reach = steps / STEPS_PER_UNIT;
  return ruleOfReach(reach, Math.min(Math.ceil((points * reach) / REACH_PER_POINTS) + 1, MOST_POINTS));
}

/** The same with `count` points by T itself, a multiple of the step; 0 for a plain rule. */
export function ruleOfReach(reach: number, count: number): CrowdedRule {
  const steps = reach * STEPS_PER_UNIT;
  let ofReach = kept[steps];
  if (!ofReach) kept[steps] = ofReach = [];
  let rule = ofReach[count];
  if (!rule) ofReach[count] = rule = { reach, ...partOfRule(reach, 0, 1, count) };
  return rule;
}

/** `count` points on the part from `from` to `to` in t, 0–1, of such a rule. */
export function partOfRule(reach: number, from: number, to: number, count: number): QuadratureRule {
  const { nodes, weights } = gaussLegendre(count);
  const half = (to - from) / 2;
  const places = nodes.map((node) => from + half * (node + 1));
  if (reach === 0) return { nodes: places, weights: weights.map((weight) => half * weight) };
  const whole = Math.sinh(reach);
  return {
    nodes: places.map((t) => Math.sinh(reach * t) / whole),
    weights: weights.map((weight, j) => (half * weight * Math.cosh(reach * places[j]!) * reach) / whole),
  };
}
