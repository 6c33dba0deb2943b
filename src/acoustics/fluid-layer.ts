import type { FluidMedium } from './fibre.ts';

/** The largest e-folding across one fluid layer: e^−60 is 520 dB, beyond it nothing is left to count. */
const MOST_DECAY = 60;

/** Largest |kz d|⁴ for which series and doubling are faster than trigonometric functions. */
const SERIES4 = 64 ** 2;

/** Numbers per layer in what `prepareFluidLayer` writes: d², k²d², Zc k d and its inverse. */
export const FLUID_NUMBERS = 7;

/** Writes what `fluidLayer` needs of a layer `thickness_m` thick at one frequency, from index `at` on. */
export function prepareFluidLayer(medium: FluidMedium, thickness_m: number, out: Float64Array, at: number): void {
  const { kRe, kIm, zcRe, zcIm } = medium;
  const d2 = thickness_m * thickness_m;
  const zkRe = (zcRe * kRe - zcIm * kIm) * thickness_m;
  const zkIm = (zcRe * kIm + zcIm * kRe) * thickness_m;
  const size = zkRe * zkRe + zkIm * zkIm;
  out[at] = d2;
  out[at + 1] = (kRe * kRe - kIm * kIm) * d2;
  out[at + 2] = 2 * kRe * kIm * d2;
  out[at + 3] = zkRe;
  out[at + 4] = zkIm;
  out[at + 5] = zkRe / size;
  out[at + 6] = -zkIm / size;
}

/**
 * Writes A = D, B and C of one fluid layer, [cos kz d, jZc k sin(kz d)/kz; j kz sin(kz d)/(Zc k), cos kz d], real and
 * imaginary parts in turn, into `out`. All are entire functions of kz² = k² − kx², so that no root need be taken while kz d
 * is small: cos z and sin z/z by six terms of their series for |z| ≤ 1 (to 1e-11), doubled as often as it takes.
 *
 * @param layers What `prepareFluidLayer` wrote; the layer's from index `at` on.
 * @param along Wave number² along the layer, kx², rad²/m², in place 0: a number by itself would be put on the heap, tens
 *   of thousands of times in one prediction.
 */
export function fluidLayer(layers: Float64Array, at: number, along: Float64Array, out: Float64Array): void {
  const zRe = layers[at + 1]! - along[0]! * layers[at]!;
  const zIm = layers[at + 2]!;
  let x = zRe;
  let y = zIm;
  let size = x * x + y * y;
  let cosRe: number;
  let cosIm: number;
  let sincRe: number;
  let sincIm: number;
  if (size > SERIES4) {
    circular[0] = x;
    circular[1] = y;
    trigonometric();
    cosRe = circular[0]!;
    cosIm = circular[1]!;
    sincRe = circular[2]!;
    sincIm = circular[3]!;
  } else {
    let doublings = 0;
    for (; size > 1; doublings++) {
      x *= 0.25;
      y *= 0.25;
      size *= 0.0625;
    }
    // Real coefficients at a complex place x + jy: b_k = c_k + 2x b_{k+1} − (x² + y²) b_{k+2}, two multiplications a term
    // (Knuth, The Art of Computer Programming 2, 4.6.4).
    const r = x + x;
    const c5 = -1 / 3628800 + r / 479001600;
    const c4 = 1 / 40320 + r * c5 - size / 479001600;
    const c3 = -1 / 720 + r * c4 - size * c5;
    const c2 = 1 / 24 + r * c3 - size * c4;
    const c1 = -0.5 + r * c2 - size * c3;
    cosRe = 1 + x * c1 - size * c2;
    cosIm = y * c1;
    const s5 = -1 / 39916800 + r / 6227020800;
    const s4 = 1 / 362880 + r * s5 - size / 6227020800;
    const s3 = -1 / 5040 + r * s4 - size * s5;
    const s2 = 1 / 120 + r * s3 - size * s4;
    const s1 = -1 / 6 + r * s2 - size * s3;
    sincRe = 1 + x * s1 - size * s2;
    sincIm = y * s1;
    // sin 2z/2z = sin z/z · cos z; cos 2z = 2 cos² z − 1
    for (; doublings > 0; doublings--) {
      const re = sincRe * cosRe - sincIm * cosIm;
      sincIm = sincRe * cosIm + sincIm * cosRe;
      sincRe = re;
      const square = 2 * (cosRe * cosRe - cosIm * cosIm) - 1;
      cosIm = 4 * cosRe * cosIm;
      cosRe = square;
    }
  }
  out[0] = cosRe;
  out[1] = cosIm;
  // B = j Zc k d · sin z/z
  const bRe = layers[at + 3]!;
  const bIm = layers[at + 4]!;
  out[2] = -bRe * sincIm - bIm * sincRe;
  out[3] = bRe * sincRe - bIm * sincIm;
  // C = j z²/(Zc k d) · sin z/z
  const qRe = zRe * sincRe - zIm * sincIm;
  const qIm = zRe * sincIm + zIm * sincRe;
  const cRe = layers[at + 5]!;
  const cIm = layers[at + 6]!;
  out[4] = -qRe * cIm - qIm * cRe;
  out[5] = qRe * cRe - qIm * cIm;
}

/** What `trigonometric` is given, x and y, and what it gives back. */
const circular = new Float64Array(4);

/** cos z and sin z/z by z² = x + jy, z = p − jq with q ≥ 0, held back where nothing is left to count. */
function trigonometric(): void {
  const x = circular[0]!;
  const y = circular[1]!;
  const modulus = Math.sqrt(x * x + y * y);
  let p: number;
  let q: number;
  if (x >= 0) {
    p = Math.sqrt((modulus + x) / 2);
    q = -y / (2 * p);
  } else {
    q = Math.sqrt((modulus - x) / 2);
    p = -y / (2 * q);
  }
  const grow = Math.exp(Math.min(q, MOST_DECAY));
  const cosh = (grow + 1 / grow) / 2;
  const sinh = (grow - 1 / grow) / 2;
  const cos = Math.cos(p);
  const sin = Math.sin(p);
  // cos(p − jq) = cos p cosh q + j sin p sinh q; sin(p − jq) = sin p cosh q − j cos p sinh q
  circular[0] = cos * cosh;
  circular[1] = sin * sinh;
  const sinRe = sin * cosh;
  const sinIm = -cos * sinh;
  circular[2] = (sinRe * p - sinIm * q) / modulus;
  circular[3] = (sinIm * p + sinRe * q) / modulus;
}
