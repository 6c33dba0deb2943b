import { expect, it } from 'vitest';
import { FLUID_NUMBERS, fluidLayer, prepareFluidLayer } from '#src/acoustics/fluid-layer.ts';

/** The judge: [cos kz d, jZc k sin(kz d)/kz; j kz sin(kz d)/(Zc k)] by the root and complex functions, written out. */
function judge(kz2Re: number, kz2Im: number, d: number, zkRe: number, zkIm: number): number[] {
  const size = Math.hypot(kz2Re, kz2Im);
  const kzRe = Math.sqrt((size + kz2Re) / 2);
  const kzIm = -Math.sqrt((size - kz2Re) / 2);
  const [x, y] = [kzRe * d, kzIm * d];
  const cos: Pair = [Math.cos(x) * Math.cosh(y), -Math.sin(x) * Math.sinh(y)];
  const sin: Pair = [Math.sin(x) * Math.cosh(y), Math.cos(x) * Math.sinh(y)];
  const b = times(times([0, 1], [zkRe, zkIm]), over(sin, [kzRe, kzIm]));
  const c = times(times([0, 1], [kzRe, kzIm]), over(sin, [zkRe, zkIm]));
  return [...cos, ...b, ...c];
}

type Pair = [number, number];
const times = ([a, b]: Pair, [c, d]: Pair): Pair => [a * c - b * d, a * d + b * c];
const over = (a: Pair, [c, d]: Pair): Pair => times(a, [c / (c * c + d * d), -d / (c * c + d * d)]);

const SIZES = [0.01, 0.5, 0.99, 1.01, 3.9, 4.1, 15, 40, 63, 65, 300, 2500];
// Hardly any loss, some, and waves that fade or run and fade at once; y ≤ 0.
const TURNS = [0.001, 0.1, 0.5, 0.9, 0.999];

it.each(SIZES)('a fluid layer with |kz d|² = %d is what the closed form says, to 1e-7', (z2) => {
  const layers = new Float64Array(2 * FLUID_NUMBERS);
  const out = new Float64Array(6);
  for (const turn of TURNS) {
    for (const d of [0.02, 0.3]) {
      // k² with the imaginary part asked for; kx² brings the real part of kz² where it is wanted.
      const [re, im] = [(z2 * Math.cos(turn * Math.PI)) / d / d, (-z2 * Math.sin(turn * Math.PI)) / d / d];
      const medium = { kRe: Math.sqrt(-im), kIm: -Math.sqrt(-im) / 2, zcRe: 900, zcIm: -200 };
      const kx2 = medium.kRe ** 2 - medium.kIm ** 2 - re;
      prepareFluidLayer(medium, d, layers, FLUID_NUMBERS);
      fluidLayer(layers, FLUID_NUMBERS, Float64Array.of(kx2), out);
      const [zkRe, zkIm] = times([medium.zcRe, medium.zcIm], [medium.kRe, medium.kIm]);
      const expected = judge(re, im, d, zkRe, zkIm);
      for (let i = 0; i < 6; i += 2) {
        const size = Math.hypot(expected[i]!, expected[i + 1]!);
        expect(Math.hypot(out[i]! - expected[i]!, out[i + 1]! - expected[i + 1]!) / size).toBeLessThan(1e-7);
      }
    }
  }
});
