/** The largest e-folding across one fluid layer: e^−60 is 520 dB, beyond it nothing is left to count. */
const MOST_DECAY = 60;

/** Largest |kz d|⁴ for which series and doubling are faster than trigonometric functions. */
const SERIES4 = 64 ** 2;

/**
 * Writes A = D, B and C of one fluid layer, [cos kz d, jZc k sin(kz d)/kz; j kz sin(kz d)/(Zc k), cos kz d], real and
 * imaginary parts in turn, into `out`. All are entire functions of kz², so that no root need be taken while kz d is small:
 * cos z and sin z/z by six terms of their series for |z| ≤ 1 (to 1e-11), doubled as often as it takes.
 *
 * @param kz2Re kz² = k² − kx², rad²/m².
 * @param zkRe Zc k, and its inverse square modulus `inverseZk2`.
 */
export function fluidLayer(
  kz2Re: number,
  kz2Im: number,
  thickness_m: number,
  zkRe: number,
  zkIm: number,
  inverseZk2: number,
  out: Float64Array,
): void {
  const d2 = thickness_m * thickness_m;
  let x = kz2Re * d2;
  let y = kz2Im * d2;
  let size = x * x + y * y;
  if (size > SERIES4) trigonometric(x, y, size);
  else {
    let doublings = 0;
    for (; size > 1; doublings++) {
      x *= 0.25;
      y *= 0.25;
      size *= 0.0625;
    }
    series(x, y, size, doublings);
  }
  out[0] = cosRe;
  out[1] = cosIm;
  // B = j Zc k d · sin z/z
  const bRe = thickness_m * (zkRe * sincRe - zkIm * sincIm);
  const bIm = thickness_m * (zkRe * sincIm + zkIm * sincRe);
  out[2] = -bIm;
  out[3] = bRe;
  // C = j kz² d/(Zc k) · sin z/z
  const qRe = kz2Re * sincRe - kz2Im * sincIm;
  const qIm = kz2Re * sincIm + kz2Im * sincRe;
  const scale = thickness_m * inverseZk2;
  out[4] = (qRe * zkIm - qIm * zkRe) * scale;
  out[5] = (qRe * zkRe + qIm * zkIm) * scale;
}

// cos z and sin z/z of the last layer.
let cosRe = 0;
let cosIm = 0;
let sincRe = 0;
let sincIm = 0;

/**
 * z² = x + jy given with its squared modulus. A polynomial with real coefficients at a complex place takes two
 * multiplications a term: b_k = c_k + 2x b_{k+1} − |z²|² b_{k+2} (Knuth, The Art of Computer Programming 2, 4.6.4).
 */
function series(x: number, y: number, size: number, doublings: number): void {
  const r = x + x;
  const c5 = -1 / 3628800 + r / 479001600;
  const c4 = 1 / 40320 + r * c5 - size / 479001600;
  const c3 = -1 / 720 + r * c4 - size * c5;
  const c2 = 1 / 24 + r * c3 - size * c4;
  const c1 = -0.5 + r * c2 - size * c3;
  let cRe = 1 + x * c1 - size * c2;
  let cIm = y * c1;
  const s5 = -1 / 39916800 + r / 6227020800;
  const s4 = 1 / 362880 + r * s5 - size / 6227020800;
  const s3 = -1 / 5040 + r * s4 - size * s5;
  const s2 = 1 / 120 + r * s3 - size * s4;
  const s1 = -1 / 6 + r * s2 - size * s3;
  let sRe = 1 + x * s1 - size * s2;
  let sIm = y * s1;
  for (let i = 0; i < doublings; i++) {
    const re = sRe * cRe - sIm * cIm;
    sIm = sRe * cIm + sIm * cRe;
    sRe = re;
    const square = 2 * (cRe * cRe - cIm * cIm) - 1;
    cIm = 4 * cRe * cIm;
    cRe = square;
  }
  cosRe = cRe;
  cosIm = cIm;
  sincRe = sRe;
  sincIm = sIm;
}

/** The same by z = p − jq, q ≥ 0, held back where nothing is left to count. */
function trigonometric(x: number, y: number, size: number): void {
  const modulus = Math.sqrt(size);
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
  cosRe = cos * cosh;
  cosIm = sin * sinh;
  const sinRe = sin * cosh;
  const sinIm = -cos * sinh;
  sincRe = (sinRe * p - sinIm * q) / modulus;
  sincIm = (sinIm * p + sinRe * q) / modulus;
}
