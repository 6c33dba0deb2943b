import { gaussLegendre } from './gauss-legendre.ts';

/** A place where an integrand may peak like 1/((x − place)² + width²). */
export interface Peak {
  place: number;
  width: number;
}

/**
 * Quadrature nodes on an interval, crowded towards peaks: between two breakpoints x = a + w sinh t with Gauss–Legendre
 * points in t, which turns a Lorentzian of half-width w into a smooth function of t. Buffers are reused; no allocation
 * once they have grown to size.
 */
export class CrowdedNodes {
  x = new Float64Array(512);
  weight = new Float64Array(512);
  count = 0;
  #breaks = new Float64Array(64);
  #widths = new Float64Array(64);
  #used = 0;

  /** Starts an interval. */
  begin(): this {
    this.count = 0;
    this.#used = 0;
    return this;
  }

  /** A breakpoint; `width` > 0 crowds points to it, Infinity does not. Equal ones are joined, the narrower width kept. */
  breakAt(place: number, width: number): this {
    let i = this.#used;
    if (i === this.#breaks.length) return this;
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

  /** Fills nodes and weights between the first and the last breakpoint, `pointsPerPiece` in each piece. */
  fill(pointsPerPiece: number): this {
    const breaks = this.#breaks;
    const widths = this.#widths;
    for (let i = 0; i + 1 < this.#used; i++) {
      const a = breaks[i]!;
      const b = breaks[i + 1]!;
      const length = b - a;
      if (length < 1e-9) {
        widths[i + 1] = Math.min(widths[i + 1]!, widths[i]!);
        continue;
      }
      const narrowA = widths[i]! < length;
      const narrowB = widths[i + 1]! < length;
      if (narrowA && narrowB) {
        const middle = (a + b) / 2;
        this.#piece(a, middle - a, widths[i]!, pointsPerPiece);
        this.#piece(b, middle - b, widths[i + 1]!, pointsPerPiece);
      } else if (narrowA) this.#piece(a, length, widths[i]!, pointsPerPiece);
      else if (narrowB) this.#piece(b, -length, widths[i + 1]!, pointsPerPiece);
      else this.#piece(a, length, Infinity, pointsPerPiece);
    }
    return this;
  }

  /** Points from `start` over `length` (either sign), crowded at `start`. */
  #piece(start: number, length: number, width: number, points: number): void {
    const { nodes, weights } = gaussLegendre(points);
    if (this.count + points > this.x.length) this.#grow();
    const size = Math.abs(length);
    const sign = length < 0 ? -1 : 1;
    const reach = Math.asinh(size / width);
    for (let j = 0; j < points; j++) {
      const half = (nodes[j]! + 1) / 2;
      if (width === Infinity) {
        this.x[this.count] = start + length * half;
        this.weight[this.count++] = (size * weights[j]!) / 2;
      } else {
        const t = reach * half;
        this.x[this.count] = start + sign * width * Math.sinh(t);
        this.weight[this.count++] = (width * Math.cosh(t) * reach * weights[j]!) / 2;
      }
    }
  }

  #grow(): void {
    const x = new Float64Array(this.x.length * 2);
    const weight = new Float64Array(x.length);
    x.set(this.x);
    weight.set(this.weight);
    this.x = x;
    this.weight = weight;
  }
}
