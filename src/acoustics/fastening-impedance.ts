import { pointMobility_m_Ns } from './point-mobility.ts';

/**
 * Mechanical impedance of a leaf at its fastenings: force per m² of floor over the difference between the velocity at
 * the fastenings and the leaf's mean velocity.
 *
 * Fastenings on a lattice b × l: 1/K = jω Σ 1/(B̃γ⁴ − ω²m') over γ = 2π |(μ/b, ν/l)| without (0,0). The rows along b are
 * summed in closed form, Σ_μ 1/((2πμ/b)² + s²) = (b/2s) coth(sb/2); far rows by their asymptote. With one row only (ν = 0)
 * it is the clamped strip 1/κ⁴ − [cot(κ/2) + coth(κ/2)]/(4κ³). What stiffens the lines by EI is spread over the leaf, with the loss of the
 * bays: (1+jη)(Bγ⁴ + (EI/b)(2πν/l)⁴). Limits: jωK → 720 B/b⁴ for lines at low frequency,
 * K → 2(1+j) m'c_B/b for lines and n·8√(Bm') for points at high frequency; both are tested.
 */
export interface Lattice {
  /** Distance of the lines, m. */
  readonly line_m: number;
  /** Distance of the points along a line, m. Infinity: a continuous line. */
  readonly point_m: number;
  /** Bending stiffness of what runs along each line under the leaf, as furring channel does, N·m²; 0 or absent: nothing. */
  readonly lineBending_Nm2?: number;
}

/** Complex number written by the kernels of this folder. */
export interface Complex {
  re: number;
  im: number;
}

/** From s b so large on coth(sb/2) is 1, to 2e-5. */
const ALL_BUT_ONE = 12;

/** Rows summed one by one before the asymptote takes over, in units of the bending wave number. */
const FAR = 1.5;
const MOST_ROWS = 60;

/** Writes 1/K, m²·m/(N·s) per m² of floor, into `out`. `lossFactor` is that of the bays: B̃ = B (1+jη). */
export function fasteningMobility(
  lattice: Lattice,
  bending_Nm: number,
  surfaceMass_kg_m2: number,
  lossFactor: number,
  omega_rad_s: number,
  out: Complex,
): Complex {
  const { line_m, point_m } = lattice;
  // The lattice turned by 90° is the same: rows along the longer side are fewer, and sooner is coth 1 in them.
  const stiffer = (lattice.lineBending_Nm2 ?? 0) / (line_m * bending_Nm);
  // Across stiffened lines the sum in closed form is not the same.
  const turned = stiffer === 0 && Number.isFinite(point_m) && point_m > line_m;
  const b = turned ? point_m : line_m;
  const l = turned ? line_m : point_m;
  // 1/B̃ and κ² = ω √(m'/B̃); √(1/(1+jη)) by half its angle.
  const size = 1 + lossFactor * lossFactor;
  const iRe = 1 / (bending_Nm * size);
  const iIm = -lossFactor / (bending_Nm * size);
  const half = -Math.atan(lossFactor) / 2;
  const k2 = (omega_rad_s * Math.sqrt(surfaceMass_kg_m2 / bending_Nm)) / Math.sqrt(Math.sqrt(size));
  const k2Re = k2 * Math.cos(half);
  const k2Im = k2 * Math.sin(half);

  strip(b, k2Re, k2Im, row);
  let sumRe = row.re;
  let sumIm = row.im;
  if (Number.isFinite(l)) {
    const q1 = (2 * Math.PI) / l;
    const rows = Math.min(Math.ceil((FAR * Math.sqrt(k2)) / q1) + 1, MOST_ROWS);
    for (let nu = 1; nu <= rows; nu++) {
      const q2 = nu * q1 * (nu * q1);
      if (stiffer === 0) lineRow(b, q2, k2Re, k2Im, row);
      else stiffenedRow(b, q2, k2Re, k2Im, stiffer, row);
      sumRe += 2 * row.re;
      sumIm += 2 * row.im;
    }
    // Σ_{ν>N} 2·(b/2)·(1 + ⅝κ⁴/q⁴)/(2q³) with Σ_{ν>N} ν⁻ⁿ ≈ M¹⁻ⁿ/(n−1) · (1 − n(n−1)/24M²), M = N + ½
    const inverse2 = 1 / ((rows + 0.5) * (rows + 0.5));
    const far = inverse2 / (q1 * q1);
    const tail = ((b * far) / (4 * q1)) * (1 - inverse2 / 4) * stiffened(stiffer);
    const more = ((5 / 24) * far * far * (1 - 1.75 * inverse2)) / (1 - inverse2 / 4);
    sumRe += tail * (1 + more * (k2Re * k2Re - k2Im * k2Im));
    sumIm += tail * more * 2 * k2Re * k2Im;
  }
  // jω · sum / B̃
  const re = sumRe * iRe - sumIm * iIm;
  const im = sumRe * iIm + sumIm * iRe;
  out.re = -omega_rad_s * im;
  out.im = omega_rad_s * re;
  return out;
}

/** So slow a motion that the leaf's mass does not count: κb of the longer side. */
const RESTING = 0.3;

/** What a leaf gives between its fastenings at rest: its mean displacement against theirs per force on each m² of floor, m³/N. */
export function restingGive_m3_N(lattice: Lattice, bending_Nm: number): number {
  const side = Number.isFinite(lattice.point_m) ? Math.max(lattice.line_m, lattice.point_m) : lattice.line_m;
  const omega = (RESTING / side) ** 2 * Math.sqrt(bending_Nm);
  return fasteningMobility(lattice, bending_Nm, 1, 0, omega, { re: 0, im: 0 }).im / omega;
}

/** Far rows with e against those without: Im (1 − j√e)^−½ / (½√e), over 1. */
function stiffened(e: number): number {
  if (e === 0) return 1;
  const root = Math.sqrt(e);
  // (1 − j√e)^−½ = (1+e)^−¼ e^{j½ atan √e}
  return (2 * (1 + e) ** -0.25 * Math.sin(Math.atan(root) / 2)) / root;
}

const row: Complex = { re: 0, im: 0 };
const part: Complex = { re: 0, im: 0 };

/** Row ν = 0 without μ = 0: b⁴·[1/κ⁴ − (cot(κ/2)+coth(κ/2))/(4κ³)] with κ = b·√κ², or its series for small κ. */
function strip(b: number, k2Re: number, k2Im: number, out: Complex): void {
  const b2 = b * b;
  const xRe = b2 * k2Re;
  const xIm = b2 * k2Im;
  const fourthRe = xRe * xRe - xIm * xIm;
  const fourthIm = 2 * xRe * xIm;
  const b4 = b2 * b2;
  if (xRe * xRe + xIm * xIm < 0.25 ** 2) {
    out.re = b4 * (1 / 720 + fourthRe / 1209600);
    out.im = b4 * (fourthIm / 1209600);
    return;
  }
  lineRow(b, 0, k2Re, k2Im, out);
  const size = fourthRe * fourthRe + fourthIm * fourthIm;
  out.re += (b4 * fourthRe) / size;
  out.im -= (b4 * fourthIm) / size;
}

/** Σ_μ 1/(X² − κ⁴) over all μ, X = (2πμ/b)² + q². */
function lineRow(b: number, q2: number, k2Re: number, k2Im: number, out: Complex): void {
  cothTerm(b, q2 - k2Re, -k2Im, part);
  const re = part.re;
  const im = part.im;
  cothTerm(b, q2 + k2Re, k2Im, part);
  // (first − second) / (2κ²)
  const dRe = re - part.re;
  const dIm = im - part.im;
  const size = 2 * (k2Re * k2Re + k2Im * k2Im);
  out.re = (dRe * k2Re + dIm * k2Im) / size;
  out.im = (dIm * k2Re - dRe * k2Im) / size;
}

/** The same of a row whose lines are stiffened, e = EI/(bB): X² − κ⁴ + e q⁴. */
function stiffenedRow(b: number, q2: number, k2Re: number, k2Im: number, e: number, out: Complex): void {
  const re = k2Re * k2Re - k2Im * k2Im - e * q2 * q2;
  const im = 2 * k2Re * k2Im;
  const modulus = Math.sqrt(re * re + im * im);
  const rootRe = Math.sqrt(Math.max((modulus + re) / 2, 0));
  const rootIm = Math.sqrt(Math.max((modulus - re) / 2, 0)) * (im < 0 ? -1 : 1);
  lineRow(b, q2, rootRe, rootIm, out);
}

/** (b/2s) coth(sb/2) for s² given; even in s, so any root serves. */
function cothTerm(b: number, s2Re: number, s2Im: number, out: Complex): void {
  const modulus = Math.sqrt(s2Re * s2Re + s2Im * s2Im);
  const sRe = Math.sqrt(Math.max((modulus + s2Re) / 2, 0));
  const sIm = Math.sqrt(Math.max((modulus - s2Re) / 2, 0)) * (s2Im < 0 ? -1 : 1);
  let cRe = 1;
  let cIm = 0;
  if (sRe * b < ALL_BUT_ONE) {
    // coth z = (1+e)/(1−e), e = exp(−2z) = exp(−sb)
    const decay = Math.exp(-sRe * b);
    const eRe = decay * Math.cos(sIm * b);
    const eIm = -decay * Math.sin(sIm * b);
    const nRe = 1 - eRe;
    const size = nRe * nRe + eIm * eIm;
    cRe = ((1 + eRe) * nRe - eIm * eIm) / size;
    cIm = (eIm * nRe + (1 + eRe) * eIm) / size;
  }
  const scale = b / (2 * modulus);
  out.re = scale * (cRe * sRe + cIm * sIm);
  out.im = scale * (cIm * sRe - cRe * sIm);
}

/** K of the infinite plate at high frequency, as 1/K: lines 2(1+j)m'c_B/b, points n·8√(Bm'). */
export function infinitePlateMobility(
  lattice: Lattice,
  bending_Nm: number,
  surfaceMass_kg_m2: number,
  omega_rad_s: number,
  out: Complex,
): Complex {
  const pointShare = pointLike(lattice.point_m, bending_Nm, surfaceMass_kg_m2, omega_rad_s);
  const point = lattice.line_m * Math.min(lattice.point_m, 1e6) * pointMobility_m_Ns(bending_Nm, surfaceMass_kg_m2);
  const speed = bendingWaveSpeed_m_s(bending_Nm, surfaceMass_kg_m2, omega_rad_s);
  const line = lattice.line_m / (4 * surfaceMass_kg_m2 * speed);
  out.re = pointShare * point + (1 - pointShare) * line;
  out.im = -(1 - pointShare) * line;
  return out;
}

export function bendingWaveSpeed_m_s(bending_Nm: number, surfaceMass_kg_m2: number, omega_rad_s: number): number {
  return Math.sqrt(Math.sqrt(bending_Nm / surfaceMass_kg_m2) * omega_rad_s);
}

/** 0 where points act as a line (bending wave longer than twice their distance), 1 where each acts alone; smooth. */
export function pointLike(point_m: number, bending_Nm: number, surfaceMass_kg_m2: number, omega_rad_s: number): number {
  if (!Number.isFinite(point_m)) return 0;
  const x = (omega_rad_s * Math.sqrt(surfaceMass_kg_m2 / bending_Nm) * point_m * point_m) / (Math.PI * Math.PI);
  return (x * x) / (1 + x * x);
}
