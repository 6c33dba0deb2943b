import type { CrowdedNodes, Piece } from './crowded-nodes.ts';
import { crowdedCount, ruleOfPart, TELLING } from './crowded-rule.ts';
import { gaussLegendre } from './gauss-legendre.ts';

/** What is summed, several numbers at once, none of them negative. */
export interface Integrand {
  /** Writes its numbers at each of the first `count` of `x` into `out`, one place after another, first those watched. */
  evaluate(x: Float64Array, count: number, out: Float64Array): void;
}

/** Points per piece of a first look at which pieces matter, for `settleFromRough`. */
export const ROUGH_POINTS = 1;

/** How many times the points an unsettled piece is given, before it is halved. */
const MORE = 1.5;

/** A piece that is refined, or half of it, has no fewer points than this. */
const LEAST_POINTS = 5;

/** What holds no more than so many times the error allowed, or this share, stays a rough sum: one point may miss most of it. */
const LITTLE = 0.25;
const LITTLE_SHARE = 0.02;

/**
 * Sums integrands over quadrature nodes, and refines each piece whose points do not settle it.
 *
 * Gauss–Legendre points tell the Legendre coefficients of what they sum up to degree n − 1; what they miss begins with degree
 * 2n. If |c_m| falls as q^m, with q from each of the two highest known, the error is about c_2n = c_0 (c_m/c_0)^(2n/m). A
 * piece that fails gets half as many points again, then it is halved, again and again. A peak that no point sees stays
 * unseen, and pieces of two points are taken as they are.
 */
export class SettledSum {
  /** The sums, in the order of the integrand's numbers. */
  readonly sums: Float64Array;
  readonly #numbers: number;
  readonly #watched: number;
  readonly #tolerance: number;
  readonly #mostHalvings: number;
  /** Error allowed to a piece, of each watched number. */
  readonly #allowed: Float64Array;
  /** What of each a piece may hold and stay a rough look. */
  readonly #little: Float64Array;
  #values = new Float64Array(0);
  // Of the part at hand.
  #places = new Float64Array(0);
  #partValues = new Float64Array(0);

  /**
   * @param numbers How many the integrand writes.
   * @param watched How many of them, the first, must settle.
   * @param tolerance Greatest error of a piece, against the whole sum; Infinity refines nothing.
   * @param mostHalvings 0 gives a piece more points only.
   */
  constructor(numbers: number, watched: number, tolerance: number, mostHalvings: number) {
    this.sums = new Float64Array(numbers);
    this.#numbers = numbers;
    this.#watched = watched;
    this.#tolerance = tolerance;
    this.#mostHalvings = mostHalvings;
    this.#allowed = new Float64Array(watched);
    this.#little = new Float64Array(watched);
  }

  /** Sums over the nodes as they are. They and the integrand are used again by `settle` or `settleFromRough`. */
  over(nodes: CrowdedNodes, integrand: Integrand): this {
    const numbers = this.#numbers;
    const { x, weight, count } = nodes;
    if (this.#values.length < count * numbers) this.#values = new Float64Array(2 * count * numbers);
    integrand.evaluate(x, count, this.#values);
    this.sums.fill(0);
    this.#add(this.#values, weight, 1, 0, count);
    return this;
  }

  /**
   * Refines what does not settle, after `over` with the same arguments.
   * @param looseness By how much more than the tolerance a piece may err, where the sum is but part of what matters.
   */
  settle(nodes: CrowdedNodes, integrand: Integrand, looseness = 1): this {
    if (!(this.#tolerance * looseness < 1)) return this;
    this.#eachPiece(nodes, looseness, (piece, first) => {
      if (this.#settled(this.#values, nodes.weight, 1, first, piece.end)) return;
      this.#add(this.#values, nodes.weight, -1, first, piece.end);
      this.#refine(piece, 0, 0, more(piece.end - first), integrand);
    });
    return this;
  }

  /**
   * The same where the nodes were but a rough look: pieces that hold little stay as they are, all others get `points`, as
   * `fill` would give them whatever the tolerance, and more where these do not settle and halvings are allowed.
   */
  settleFromRough(nodes: CrowdedNodes, integrand: Integrand, looseness: number, points: number): this {
    const little = Math.min(LITTLE * this.#tolerance, LITTLE_SHARE) * looseness;
    for (let n = 0; n < this.#watched; n++) this.#little[n] = little * this.sums[n]!;
    this.#eachPiece(nodes, looseness, (piece, first) => {
      if (this.#holdsLittle(this.#values, nodes.weight, first, piece.end)) return;
      this.#add(this.#values, nodes.weight, -1, first, piece.end);
      const count = crowdedCount(piece.reach, points);
      if (!this.#take(piece, 0, 0, count, integrand)) this.#refine(piece, 0, 0, more(count), integrand);
    });
    return this;
  }

  #eachPiece(
    { pieces, pieceCount }: CrowdedNodes,
    looseness: number,
    visit: (piece: Piece, first: number) => void,
  ): void {
    const tolerance = this.#tolerance * looseness;
    for (let n = 0; n < this.#watched; n++) this.#allowed[n] = tolerance * this.sums[n]!;
    let first = 0;
    for (let i = 0; i < pieceCount; i++) {
      const piece = pieces[i]!;
      visit(piece, first);
      first = piece.end;
    }
  }

  /** Takes part number `part` of a piece halved so often, in halves of its own where that does not settle it. */
  #refine(piece: Piece, part: number, halvings: number, points: number, integrand: Integrand): void {
    if (this.#take(piece, part, halvings, points, integrand)) return;
    const half = Math.max(Math.ceil(points / 2), LEAST_POINTS);
    this.#refine(piece, 2 * part, halvings + 1, half, integrand);
    this.#refine(piece, 2 * part + 1, halvings + 1, half, integrand);
  }

  /** Adds part number `part` of a piece halved so often, if so many points settle it or no more may be asked. */
  #take(piece: Piece, part: number, halvings: number, points: number, integrand: Integrand): boolean {
    if (this.#places.length < points) {
      this.#places = new Float64Array(points);
      this.#partValues = new Float64Array(points * this.#numbers);
    }
    const places = this.#places;
    const values = this.#partValues;
    const { start, length, reach } = piece;
    const { nodes, weights } = ruleOfPart(reach, part, 2 ** halvings, points);
    for (let j = 0; j < points; j++) places[j] = start + length * nodes[j]!;
    integrand.evaluate(places, points, values);
    const size = Math.abs(length);
    if (halvings < this.#mostHalvings && !this.#settled(values, weights, size, 0, points)) return false;
    this.#add(values, weights, size, 0, points);
    return true;
  }

  /** Whether the nodes from `first` to before `end` hold hardly more of any watched number than it may err. */
  #holdsLittle(values: Float64Array, weight: Float64Array, first: number, end: number): boolean {
    const numbers = this.#numbers;
    for (let n = 0; n < this.#watched; n++) {
      let sum = 0;
      for (let j = first; j < end; j++) sum += weight[j]! * values[j * numbers + n]!;
      if (sum > this.#little[n]!) return false;
    }
    return true;
  }

  /** Adds `scale` times the nodes from `first` to before `end`. */
  #add(values: Float64Array, weight: Float64Array, scale: number, first: number, end: number): void {
    const { sums } = this;
    const numbers = this.#numbers;
    for (let j = first; j < end; j++) {
      const share = scale * weight[j]!;
      for (let n = 0; n < numbers; n++) sums[n]! += share * values[j * numbers + n]!;
    }
  }

  /** Whether the nodes from `first` to before `end`, their weights times `scale`, give each watched number closely enough. */
  #settled(values: Float64Array, weight: Float64Array, scale: number, first: number, end: number): boolean {
    const points = end - first;
    if (points < TELLING) return true;
    const { highest, second } = gaussLegendre(points);
    const numbers = this.#numbers;
    for (let n = 0; n < this.#watched; n++) {
      let sum = 0;
      let last = 0;
      let before = 0;
      for (let j = 0; j < points; j++) {
        const share = weight[first + j]! * values[(first + j) * numbers + n]!;
        sum += share;
        last += share * highest[j]!;
        before += share * second[j]!;
      }
      const allowed = this.#allowed[n]! / (scale * sum);
      const lastRatio = Math.min(Math.abs(last) / sum, 1);
      const beforeRatio = Math.min(Math.abs(before) / sum, 1);
      // Most pieces are decided without a power: of a ratio up to 1 the first has exponents from 2 to 3, the second from 2.
      if (lastRatio * lastRatio * lastRatio > allowed) return false;
      if (lastRatio * lastRatio > allowed && lastRatio ** ((2 * points) / (points - 1)) > allowed) return false;
      if (beforeRatio * beforeRatio > allowed && beforeRatio ** ((2 * points) / (points - 2)) > allowed) return false;
    }
    return true;
  }
}

function more(points: number): number {
  return Math.max(Math.ceil(MORE * points), LEAST_POINTS);
}
