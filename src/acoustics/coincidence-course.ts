import type { FloorModel } from './floor-model.ts';
import { FreeBendingWaves } from './free-bending-waves.ts';
import { coincidence_Hz, type PlateState, plateAt, softeningKinks_Hz } from './leaf-plate.ts';

/** Where a leaf's bending waves may meet sound or one another and matter to a band. */
const FROM_Hz = 15;
export const TO_Hz = 7000;
/** Points of the even grid: a quarter of an octave apart. */
const POINTS = 37;

/** Halvings between two points of the grid: to a thousandth of the frequency. */
const HALVINGS = 7;

/** A place along ln f where a quantity of the course passes a value, and how fast it does, per unit of ln f. */
export interface Crossing {
  readonly logFrequency: number;
  readonly slope: number;
}

/**
 * ln(f/fc) of each leaf over all that is heard, by steps of a quarter of an octave: fc itself depends on frequency, as thick
 * and damped leaves soften, so that f/fc may rise and fall.
 */
export class CoincidenceCourse {
  /** Where the stiffness of a leaf has a kink; the grid has points there too. */
  readonly kinks_Hz: readonly number[];
  readonly logFrequency: readonly number[];
  /** ln(f/fc) of each leaf by itself. */
  readonly logRatio: readonly (readonly number[])[];
  /** −2 ln(k/k0) of the free bending waves, the same where no mat joins leaves; NaN where there is none. */
  readonly free: readonly (readonly number[])[];
  readonly #model: FloorModel;
  readonly #state: PlateState = { bending_Nm: 0, lossFactor: 0 };
  readonly #waves: FreeBendingWaves;
  readonly #bending_Nm: Float64Array;

  constructor(model: FloorModel) {
    this.#model = model;
    this.kinks_Hz = model.plates.flatMap(softeningKinks_Hz).filter((f_Hz) => f_Hz > FROM_Hz && f_Hz < TO_Hz);
    this.#waves = new FreeBendingWaves(model);
    this.#bending_Nm = new Float64Array(model.plates.length);
    const step = Math.log(TO_Hz / FROM_Hz) / (POINTS - 1);
    const even = Array.from({ length: POINTS }, (_, j) => Math.log(FROM_Hz) + j * step);
    this.logFrequency = [...even, ...this.kinks_Hz.map(Math.log)].sort((a, b) => a - b);
    this.logRatio = model.plates.map((_, leaf) => this.logFrequency.map((x) => this.at(leaf, x)));
    this.free = this.joined
      ? this.logRatio.map((_, i) => this.logFrequency.map((x) => this.freeAt(i, x)))
      : this.logRatio;
  }

  /** Whether a mat joins any leaves, so that free waves are not the leaves' own. */
  get joined(): boolean {
    return this.#waves.joined;
  }

  /** As `free`, between the points of the grid too. */
  freeAt(wave: number, logFrequency: number): number {
    if (!this.joined) return this.at(wave, logFrequency);
    const { plates } = this.#model;
    const f_Hz = Math.exp(logFrequency);
    for (let i = 0; i < plates.length; i++) this.#bending_Nm[i] = plateAt(plates[i]!, f_Hz, this.#state).bending_Nm;
    return -2 * Math.log(this.#waves.at(f_Hz, this.#bending_Nm)[wave]!);
  }

  /** As `logRatio`, between the points of the grid too. */
  at(leaf: number, logFrequency: number): number {
    const f_Hz = Math.exp(logFrequency);
    const plate = this.#model.plates[leaf]!;
    const { bending_Nm } = plateAt(plate, f_Hz, this.#state);
    const fc_Hz = coincidence_Hz(plate.surfaceMass_kg_m2, bending_Nm, this.#model.air);
    return Math.log(f_Hz / fc_Hz);
  }

  /** Whether two free waves run alike all along, as those of two equal leaves do. */
  alike(wave: number, other: number): boolean {
    return this.free[wave]!.every((y, j) => y === this.free[other]![j]);
  }

  /** Loss factor of a free wave: its leaf's, the least of all where a mat joins leaves. */
  freeLoss(wave: number, logFrequency: number): number {
    if (!this.joined) return this.loss(wave, logFrequency);
    return this.#model.plates.reduce((least, _, leaf) => Math.min(least, this.loss(leaf, logFrequency)), Infinity);
  }

  /** Loss factor of a leaf. */
  loss(leaf: number, logFrequency: number): number {
    return plateAt(this.#model.plates[leaf]!, Math.exp(logFrequency), this.#state).lossFactor;
  }

  /** Everywhere along ln f that something which ln(f/fc) of a leaf decides begins or ceases, by bisection. */
  changes(leaf: number, holds: (logFrequency: number, logRatio: number) => boolean): number[] {
    const x = this.logFrequency;
    const y = this.logRatio[leaf]!;
    const found: number[] = [];
    let before = holds(x[0]!, y[0]!);
    for (let j = 0; j + 1 < x.length; j++) {
      const after = holds(x[j + 1]!, y[j + 1]!);
      if (after !== before) {
        let low = x[j]!;
        let high = x[j + 1]!;
        for (let step = 0; step < HALVINGS; step++) {
          const middle = (low + high) / 2;
          if (holds(middle, this.at(leaf, middle)) === before) low = middle;
          else high = middle;
        }
        found.push((low + high) / 2);
      }
      before = after;
    }
    return found;
  }

  /** Everywhere that `values` along the grid, which `exact` gives between its points, pass `wanted`. */
  crossings(values: readonly number[], exact: (logFrequency: number) => number, wanted = 0): Crossing[] {
    const found: Crossing[] = [];
    const x = this.logFrequency;
    for (let j = 0; j + 1 < x.length; j++) {
      const low = values[j]! - wanted;
      const high = values[j + 1]! - wanted;
      if (!(low * high < 0 || (low === 0 && high !== 0))) continue;
      found.push(between({ x: x[j]!, y: low }, { x: x[j + 1]!, y: high }, (at) => exact(at) - wanted));
    }
    return found;
  }
}

interface Point {
  x: number;
  y: number;
}

/** Two steps of regula falsi: values run almost straight between two points of the grid. */
function between(a: Point, b: Point, y: (x: number) => number): Crossing {
  for (let step = 0; step < 2 && a.y !== 0 && b.y !== 0; step++) {
    const x = a.x + ((b.x - a.x) * a.y) / (a.y - b.y);
    const middle = { x, y: y(x) };
    if (middle.y * a.y > 0) a = middle;
    else b = middle;
  }
  const slope = (b.y - a.y) / (b.x - a.x);
  return { logFrequency: a.x - a.y / slope, slope };
}
