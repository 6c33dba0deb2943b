import { gaussLegendre, type QuadratureRule } from './gauss-legendre.ts';

/** A crowded rule this long in t gets as many points as a plain one: the peak's poles lie π/2 off its axis. */
const REACH_PER_POINTS = 3;
const MOST_POINTS = 80;

/** Fewer points say nothing about what they miss. */
export const TELLING = 3;

/** Rules are kept for lengths in t rounded up to this step, so that no hyperbolic function is left to each call. */
const STEPS_PER_UNIT = 4;

/** Nodes and weights on 0…1, crowded to 0. */
export interface CrowdedRule extends QuadratureRule {
  /** Length in t, T of x = sinh(tT)/sinh T. */
  readonly reach: number;
}

/** Parts are kept up to this many a rule, which is nearly all that are asked for. */
const MOST_KEPT_PARTS = 8;

/** By length in t, count of points, and part: those of 1, 2, 4, 8 stand one after another. */
const kept: ((CrowdedRule | undefined)[] | undefined)[][] = [];

/**
 * For an integrand that peaks at 0 over `width`: x = sinh(tT)/sinh T with Gauss–Legendre points in t, T = asinh(1/width),
 * and so many more points than `points` as T is long.
 */
export function crowdedRule(width: number, points: number): CrowdedRule {
  // asinh(1/width), by a logarithm, which is several times as fast.
  const length = Math.log((1 + Math.sqrt(1 + width * width)) / width);
  const reach = Math.ceil(length * STEPS_PER_UNIT) / STEPS_PER_UNIT;
  return ruleOfPart(reach, 0, 1, crowdedCount(reach, points));
}

/** How many points a rule of length `reach` has; `points` in one without peak. Short ones keep what tells whether they settle. */
export function crowdedCount(reach: number, points: number): number {
  if (reach === 0) return points;
  const crowded = Math.ceil((points * reach) / REACH_PER_POINTS) + 1;
  return Math.min(Math.max(crowded, Math.min(points, TELLING)), MOST_POINTS);
}

/**
 * The rule with `count` points for one of `parts` equal parts in t, `part` counted from 0; kept for the next call where parts
 * are few, since the same halves come again and again.
 * @param reach T, a multiple of the step that rules are kept for; 0 for a plain rule.
 * @param parts A power of 2; 1 for the whole.
 */
export function ruleOfPart(reach: number, part: number, parts: number, count: number): CrowdedRule {
  if (parts > MOST_KEPT_PARTS) return partOfRule(reach, part / parts, (part + 1) / parts, count);
  const steps = reach * STEPS_PER_UNIT;
  let ofReach = kept[steps];
  if (!ofReach) kept[steps] = ofReach = [];
  let ofCount = ofReach[count];
  if (!ofCount) ofReach[count] = ofCount = [];
  let rule = ofCount[parts + part];
  if (!rule) ofCount[parts + part] = rule = partOfRule(reach, part / parts, (part + 1) / parts, count);
  return rule;
}

/** `count` points on the part from `from` to `to` in t, 0–1, of a rule of length `reach`. */
export function partOfRule(reach: number, from: number, to: number, count: number): CrowdedRule {
  const { nodes, weights } = gaussLegendre(count);
  const half = (to - from) / 2;
  const places = nodes.map((node) => from + half * (node + 1));
  if (reach === 0) return { reach, nodes: places, weights: weights.map((weight) => half * weight) };
  const whole = Math.sinh(reach);
  return {
    reach,
    nodes: places.map((t) => Math.sinh(reach * t) / whole),
    weights: weights.map((weight, j) => (half * weight * Math.cosh(reach * places[j]!) * reach) / whole),
  };
}
