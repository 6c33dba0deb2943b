import { describe, expect, it } from 'vitest';
import { CrowdedNodes } from '#src/acoustics/crowded-nodes.ts';
import { partOfRule, ruleOfPart } from '#src/acoustics/crowded-rule.ts';
import { gaussLegendre } from '#src/acoustics/gauss-legendre.ts';
import { loadedWave } from '#src/acoustics/loaded-wave.ts';
import { type Integrand, SettledSum } from '#src/acoustics/settled-sum.ts';

/** Two functions, the second 0 unless told, and how often they are asked. */
class Counted implements Integrand {
  asked = 0;
  readonly #first: (x: number) => number;
  readonly #second: (x: number) => number;

  constructor(first: (x: number) => number, second: (x: number) => number = () => 0) {
    this.#first = first;
    this.#second = second;
  }

  evaluate(x: Float64Array, count: number, out: Float64Array): void {
    this.asked += count;
    for (let j = 0; j < count; j++) {
      out[2 * j] = this.#first(x[j]!);
      out[2 * j + 1] = this.#second(x[j]!);
    }
  }
}

interface How {
  readonly tolerance?: number;
  readonly mostHalvings?: number;
  readonly watched?: number;
  readonly looseness?: number;
}

/** Both sums. */
function settled(
  nodes: CrowdedNodes,
  integrand: Integrand,
  { tolerance = 1e-3, mostHalvings = 12, watched = 1, looseness = 1 }: How = {},
): [number, number] {
  const { sums } = new SettledSum(2, watched, tolerance, mostHalvings)
    .over(nodes, integrand)
    .settle(nodes, integrand, looseness);
  return [sums[0]!, sums[1]!];
}

const unit = (): CrowdedNodes => new CrowdedNodes().begin().breakAt(0, Infinity).breakAt(1, Infinity);
const peak = (place: number, width: number) => (x: number) => width ** 2 / ((x - place) ** 2 + width ** 2);
const exactPeak = (place: number, width: number) => width * (Math.atan((1 - place) / width) + Math.atan(place / width));

describe('a sum that settles', () => {
  it('asks a smooth integrand at its nodes only', () => {
    const smooth = new Counted((x) => Math.exp(x));
    expect(settled(unit().fill(5), smooth)[0]).toBeCloseTo(Math.E - 1, 7);
    expect(smooth.asked).toBe(5);
  });

  it.each([
    [0.4, 0.1],
    [0.37, 0.02],
    [0.5, 0.005],
  ])('finds a peak nobody announced, at %d of half-width %d (closed form: arc tangents)', (place, width) => {
    const sum = (tolerance: number) => settled(unit().fill(5), new Counted(peak(place, width)), { tolerance })[0];
    const exact = exactPeak(place, width);
    expect(sum(1e-3) / exact).toBeCloseTo(1, 2);
    expect(Math.abs(sum(Infinity) / exact - 1)).toBeGreaterThan(0.05);
  });

  it('looks roughly first, and gives points only to pieces that hold more than little', () => {
    const nodes = () => unit().breakAt(0.3, 0.01).breakAt(0.6, Infinity);
    // Beyond 0.6 a thousandth of the sum.
    const tall = peak(0.3, 0.01);
    const counted = new Counted((x) => (x < 0.6 ? tall(x) : 4e-4 * Math.abs(x - 0.6)));
    const rough = nodes().fill(1);
    const sum = new SettledSum(2, 1, 1e-2, 8).over(rough, counted);
    const looked = counted.asked;
    sum.settleFromRough(rough, counted, 1, 5);
    const fine = nodes().fill(5);
    const crowded = fine.pieces.slice(0, 2).at(-1)!.end;
    expect(counted.asked - looked).toBe(crowded);
    const exact = 0.01 * (Math.atan(30) + Math.atan(30));
    expect(sum.sums[0]! / exact).toBeCloseTo(1, 2);
  });

  it('gives every piece its points where nothing may be called little', () => {
    const rough = unit().breakAt(0.3, 0.01).fill(1);
    const counted = new Counted(peak(0.3, 0.01));
    const { sums } = new SettledSum(2, 1, 1e-9, 0).over(rough, counted).settleFromRough(rough, counted, 1, 9);
    expect(sums[0]! / exactPeak(0.3, 0.01)).toBeCloseTo(1, 5);
  });

  it('finds a peak beside the place it was announced at', () => {
    const nodes = unit().breakAt(0.3, 0.01).fill(4);
    const [sum] = settled(nodes, new Counted(peak(0.36, 0.01)), { tolerance: 1e-2 });
    expect(sum / exactPeak(0.36, 0.01)).toBeCloseTo(1, 2);
  });

  it('sums what is not watched with the same points, and does not refine for it', () => {
    const wild = peak(0.37, 0.02);
    const watched = new Counted((x) => 1 + x, wild);
    expect(settled(unit().fill(5), watched)[0]).toBeCloseTo(1.5, 12);
    expect(watched.asked).toBe(5);
    const both = settled(unit().fill(5), new Counted((x) => 1 + x, wild), { watched: 2 });
    expect(both[0]).toBeCloseTo(1.5, 10);
    expect(both[1] / exactPeak(0.37, 0.02)).toBeCloseTo(1, 2);
  });

  it('stays rough where it is but a small part, and 0 where there is nothing', () => {
    const rough = new Counted(peak(0.37, 0.02));
    settled(unit().fill(5), rough, { looseness: 2000 });
    expect(rough.asked).toBe(5);
    expect(settled(unit().fill(5), new Counted(() => 0))[0]).toBe(0);
  });

  it('gives a piece more points, once, where it may not halve', () => {
    const wild = new Counted(peak(0.37, 0.02));
    settled(unit().fill(6), wild, { mostHalvings: 0 });
    expect(wild.asked).toBe(6 + 9);
  });
});

it('Gauss–Legendre points tell the two highest Legendre coefficients they resolve', () => {
  const { nodes, weights, highest, second } = gaussLegendre(5);
  // 3 P₄ + 2 P₃, P₄ = (35x⁴ − 30x² + 3)/8, P₃ = (5x³ − 3x)/2 (Abramowitz & Stegun, table 22.9)
  const f = [...nodes].map((x) => (3 * (35 * x ** 4 - 30 * x ** 2 + 3)) / 8 + 5 * x ** 3 - 3 * x);
  const against = (row: Float64Array) => f.reduce((sum, y, j) => sum + (y * weights[j]! * row[j]!) / 2, 0);
  expect(against(highest)).toBeCloseTo(3, 12);
  expect(against(second)).toBeCloseTo(2, 12);
});

it('the parts of a crowded rule make up the whole', () => {
  const f = (x: number) => peak(0, 0.05)(x);
  const over = ({ nodes, weights }: { nodes: Float64Array; weights: Float64Array }) =>
    nodes.reduce((sum, x, j) => sum + weights[j]! * f(x), 0);
  const parts = over(partOfRule(3.75, 0, 0.3, 9)) + over(partOfRule(3.75, 0.3, 1, 9));
  expect(parts).toBeCloseTo(0.05 * Math.atan(20), 6);
  expect(over(ruleOfPart(3.75, 0, 1, 20))).toBeCloseTo(parts, 6);
  const quarters = [0, 1, 2, 3].map((part) => over(ruleOfPart(3.75, part, 4, 9)));
  expect(quarters.reduce((sum, q) => sum + q)).toBeCloseTo(parts, 6);
});

it.each([
  [16, 3],
  [1.4, 3],
  [0.25, 0.03],
  [-400, 60],
  [0, 1e-3],
])('a loaded wave of μ⁴ = %d under load %d meets its equation', (fourth, load) => {
  const r = loadedWave(fourth, load);
  const [below, above] = [(1 - 1e-6) * r, (1 + 1e-6) * r].map((x) => (1 + x * x) ** 2 - fourth - load / x);
  expect(below).toBeLessThan(0);
  expect(above).toBeGreaterThan(0);
});
