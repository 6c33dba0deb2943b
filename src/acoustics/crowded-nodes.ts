import { crowdedRule } from './crowded-rule.ts';
import { gaussLegendre } from './gauss-legendre.ts';

/** Breakpoints closer than this are one. */
const JOINED = 1e-9;

/** Some of the nodes, on one interval between breakpoints or on half of one. */
export interface Piece {
  /** Index behind its last node. */
  end: number;
  start: number;
  /** Negative where the peak is at the upper end. */
  length: number;
  /** T of x = sinh(tT)/sinh T; 0 in a piece without peak. */
  reach: number;
}

/**
 * Quadrature nodes on an interval, crowded towards peaks: between two breakpoints x = a + w sinh t with Gauss–Legendre
 * points in t, which turns a Lorentzian of half-width w into a smooth function of t. Buffers are reused; no allocation
 * once they have grown to size.
 */
export class CrowdedNodes {
  x = new Float64Array(128);
  weight = new Float64Array(128);
  count = 0;
  readonly pieces: Piece[] = [];
  pieceCount = 0;
  #breaks = new Float64Array(64);
  #widths = new Float64Array(64);
  #used = 0;

  /** Starts an interval. */
  begin(): this {
    this.count = 0;
    this.pieceCount = 0;
    this.#used = 0;
    return this;
  }

  /** A breakpoint; `width` > 0 crowds points to it, Infinity does not. Equal ones are joined, the narrower width kept. */
  breakAt(place: number, width: number): this {
    for (let j = 0; j < this.#used; j++) {
      if (Math.abs(this.#breaks[j]! - place) > JOINED) continue;
      this.#widths[j] = Math.min(this.#widths[j]!, width);
      return this;
    }
    let i = this.#used;
    if (i === this.#breaks.length) {
      this.#breaks = doubled(this.#breaks);
      this.#widths = doubled(this.#widths);
    }
    while (i > 0 && this.#breaks[i - 1]! > place) {
      this.#breaks[i] = this.#breaks[i - 1]!;
      this.#widths[i] = this.#widths[i - 1]!;
      i--;
    }
    this.#breaks[i] = place;
    this.#widths[i] = width;
    this.#used++;
    return this;
  }

  /**
   * Fills nodes and weights between the first and the last breakpoint: `points` in a piece without peak; in one with a
   * peak `crowded` points, so many more as it is long in t.
   * @param whole Length over which a plain piece needs all its points; shorter ones get their share, two at least.
   */
  fill(points: number, whole = 0, crowded = points): this {
    const breaks = this.#breaks;
    const widths = this.#widths;
    this.#seeBeyond();
    for (let i = 0; i + 1 < this.#used; i++) {
      const a = breaks[i]!;
      const b = breaks[i + 1]!;
      const length = b - a;
      const narrowA = widths[i]! < length;
      const narrowB = widths[i + 1]! < length;
      if (narrowA && narrowB) {
        this.#piece(a, length / 2, widths[i]!, crowded);
        this.#piece(b, -length / 2, widths[i + 1]!, crowded);
      } else if (narrowA) this.#piece(a, length, widths[i]!, crowded);
      else if (narrowB) this.#piece(b, -length, widths[i + 1]!, crowded);
      else this.#plainPiece(a, length, length < whole ? Math.max(Math.ceil((points * length) / whole), 2) : points);
    }
    return this;
  }

  /** A peak bends the integrand beyond the next breakpoint too: there with a width as large as it is far. */
  #seeBeyond(): void {
    const breaks = this.#breaks;
    const widths = this.#widths;
    for (let i = 1; i < this.#used; i++) {
      widths[i] = Math.min(widths[i]!, widths[i - 1]! + breaks[i]! - breaks[i - 1]!);
    }
    for (let i = this.#used - 2; i >= 0; i--) {
      widths[i] = Math.min(widths[i]!, widths[i + 1]! + breaks[i + 1]! - breaks[i]!);
    }
  }

  #plainPiece(start: number, length: number, points: number): void {
    const { nodes, weights } = gaussLegendre(points);
    if (this.count + points > this.x.length) this.#grow();
    for (let j = 0; j < points; j++) {
      this.x[this.count] = start + (length * (nodes[j]! + 1)) / 2;
      this.weight[this.count++] = (length * weights[j]!) / 2;
    }
    this.#close(start, length, 0);
  }

  /** Points from `start` over `length` (either sign), crowded at `start`. */
  #piece(start: number, length: number, width: number, points: number): void {
    const size = Math.abs(length);
    const { nodes, weights, reach } = crowdedRule(width / size, points);
    const { length: count } = nodes;
    if (this.count + count > this.x.length) this.#grow();
    const { x, weight } = this;
    let next = this.count;
    for (let j = 0; j < count; j++) {
      x[next] = start + length * nodes[j]!;
      weight[next++] = size * weights[j]!;
    }
    this.count = next;
    this.#close(start, length, reach);
  }

  #close(start: number, length: number, reach: number): void {
    const piece = this.pieces[this.pieceCount++];
    if (!piece) {
      this.pieces.push({ end: this.count, start, length, reach });
      return;
    }
    piece.end = this.count;
    piece.start = start;
    piece.length = length;
    piece.reach = reach;
  }

  #grow(): void {
    this.x = doubled(this.x);
    this.weight = doubled(this.weight);
  }
}

function doubled(array: Float64Array): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(array.length * 2);
  longer.set(array);
  return longer;
}
