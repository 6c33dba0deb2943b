import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';
import { pointMobility_m_Ns } from './point-mobility.ts';

/** What a point force of 1 N does to the leaf that it strikes, unbounded in every direction. */
export interface StruckMotion {
  /** Re Y, the power that it puts in, m/(N·s). */
  mobility_m_Ns: number;
  /** Mean square velocity times area of the struck leaf or, where it lies on a mat, of the leaf below that, (m/s)²·m². */
  field_m4_s2: number;
}

/**
 * Writes the motion under a hammer of the uppermost leaf, with the leaf below where a mat lies between, into `out`.
 *
 * One plate: Y = 1/(8√(Bm')), and its field Re Y/(ωηm') (Cremer, Heckl & Petersson, Structure-Borne Sound). Two plates on a
 * spring, D_i = B_i k⁴ − ω²m_i, have
 *
 *   V_1 = jω (D_2 + s')/P = jω Σ A_n/(k⁴ − a_n),   V_2 = jω s'/P = jω Σ C_n/(k⁴ − a_n),   P = (D_1 + s')(D_2 + s') − s'²,
 *
 * n = 1, 2, with the waves of both plates together at k⁴ = a_n, all complex by the losses. So Y = ∫₀^∞ V_1 k dk/2π =
 * jω Σ A_n/(8 √−a_n) and ∫₀^∞ |V_2|² k dk/2π = (ω²/8) Σ C_n C_l* (1/√−a_n − 1/√−a_l*)/(a_n − a_l*), roots with positive
 * real part. On a mat of no stiffness Y is that of the upper plate alone, on a rigid one both move as if they lay on each
 * other loose. Own derivation from thin plates. The reactive part of Y is left out: below the resonance a hammer also
 * bounces on the mat.
 * @param states Stiffness and loss of every leaf at this frequency.
 * @param extraLoss Added to the loss factor of the upper leaf.
 * @param lowerExtraLoss Added to that of the leaf below the mat.
 */
export function struckPlates(
  { interlayers, plates }: FloorModel,
  states: readonly PlateState[],
  f_Hz: number,
  extraLoss: number,
  lowerExtraLoss: number,
  out: StruckMotion,
): StruckMotion {
  const omega = 2 * Math.PI * f_Hz;
  const { bending_Nm: B1 } = states[0]!;
  const m1 = plates[0]!.surfaceMass_kg_m2;
  const eta1 = states[0]!.lossFactor + extraLoss;
  const layer = interlayers[0];
  if (layer?.kind !== 'mat') {
    out.mobility_m_Ns = pointMobility_m_Ns(B1, m1);
    out.field_m4_s2 = out.mobility_m_Ns / (omega * eta1 * m1);
    return out;
  }
  const bending1 = complex(B1, B1 * eta1);
  const { bending_Nm: B2 } = states[1]!;
  const bending2 = complex(B2, B2 * (states[1]!.lossFactor + lowerExtraLoss));
  const inertia1 = complex(omega * omega * m1, 0);
  const inertia2 = complex(omega * omega * plates[1]!.surfaceMass_kg_m2, 0);
  const { dynamicStiffness_N_m3, lossFactor } = layer.mat;
  const spring = complex(dynamicStiffness_N_m3, dynamicStiffness_N_m3 * lossFactor);

  // (a − a_1)(a − a_2) B1 B2: the larger root first, the other from their product, so that nothing cancels.
  const both = times(bending1, bending2);
  const held1 = over(minus(inertia1, spring), bending1);
  const held2 = over(minus(inertia2, spring), bending2);
  const middle = scaled(plus(held1, held2), 0.5);
  const aside = scaled(minus(held1, held2), 0.5);
  const root = squareRoot(plus(times(aside, aside), over(times(spring, spring), both)));
  const first = middle.re * root.re + middle.im * root.im < 0 ? minus(middle, root) : plus(middle, root);
  const product = over(minus(times(inertia1, inertia2), times(spring, plus(inertia1, inertia2))), both);
  const second = over(product, first);

  const fourths = [first, second] as const;
  const inverseRoots = fourths.map((fourth) => over(ONE, squareRoot(scaled(fourth, -1))));
  const once = over(ONE, times(both, minus(first, second)));
  const weights = [once, scaled(once, -1)] as const;
  let mobility = 0;
  let field = 0;
  for (const [n, fourth] of fourths.entries()) {
    const struck = times(weights[n]!, minus(plus(times(bending2, fourth), spring), inertia2));
    // Re of jω A/(8√−a)
    mobility -= (omega / 8) * times(struck, inverseRoots[n]!).im;
    const below = times(weights[n]!, spring);
    for (const [l, other] of fourths.entries()) {
      const difference = minus(inverseRoots[n]!, conjugate(inverseRoots[l]!));
      const share = over(difference, minus(fourth, conjugate(other)));
      const belowOther = conjugate(times(weights[l]!, spring));
      field += ((omega * omega) / 8) * times(times(below, belowOther), share).re;
    }
  }
  out.mobility_m_Ns = mobility;
  out.field_m4_s2 = field;
  return out;
}

interface Complex {
  readonly re: number;
  readonly im: number;
}

const complex = (re: number, im: number): Complex => ({ re, im });
const ONE = complex(1, 0);
const conjugate = ({ re, im }: Complex): Complex => complex(re, -im);
const scaled = ({ re, im }: Complex, by: number): Complex => complex(by * re, by * im);
const plus = (a: Complex, b: Complex): Complex => complex(a.re + b.re, a.im + b.im);
const minus = (a: Complex, b: Complex): Complex => complex(a.re - b.re, a.im - b.im);
const times = (a: Complex, b: Complex): Complex => complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);

function over(a: Complex, b: Complex): Complex {
  const size = b.re * b.re + b.im * b.im;
  return complex((a.re * b.re + a.im * b.im) / size, (a.im * b.re - a.re * b.im) / size);
}

/** The root with positive real part. */
function squareRoot({ re, im }: Complex): Complex {
  const size = Math.sqrt(re * re + im * im);
  const real = Math.sqrt(Math.max((size + re) / 2, 0));
  const imaginary = Math.sqrt(Math.max((size - re) / 2, 0));
  return complex(real, im < 0 ? -imaginary : imaginary);
}
