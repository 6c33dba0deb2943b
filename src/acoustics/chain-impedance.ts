import { type Complex, fasteningMobility, infinitePlateMobility, type Lattice } from './fastening-impedance.ts';
import type { ModelConstants } from './model-constants.ts';
import type { SupportChain } from './supports.ts';

/**
 * Impedance matrix of a support chain between the mean velocities of two leaves, N·s/m³ per m² of floor:
 * F_up = z11 v_up − z12 v_low, F_low = z12 v_up − z22 v_low.
 */
export interface ChainImpedance {
  z11Re: number;
  z11Im: number;
  z12Re: number;
  z12Im: number;
  z22Re: number;
  z22Im: number;
}

/** Stiffness and mass per area of the leaves the chain is fastened to. */
export interface ChainEnds {
  upperBending_Nm: number;
  upperMass_kg_m2: number;
  lowerBending_Nm: number;
  lowerMass_kg_m2: number;
}

/** 'framed' where leaves bend between their fastenings, 'infinite' where free waves run along both, unbounded. */
export type FastenedLeaves = 'framed' | 'infinite';

const SPRING_KNEE_HZ = 200;

/**
 * Writes the chain's impedances at `f_Hz` into `out`.
 *
 * The chain is upper fastenings (mobility 1/K), inertia of the joists, spring, lower fastenings:
 * [1 0; c1 1][1 Zm; 0 1][1 0; cs 1] = [A B; C D], z11 = A/C, z12 = 1/C, z22 = D/C. The joists' inertia jωm_j fades as
 * 1/(1+(f/f_j)²) (empirical). Springs: s = s_0 (1 + (f/200 Hz)^x)(1 + jη). A leaf on joists of its own leaves the upper
 * one's joists free and is joined to it along the common edges.
 * @param leaves 'infinite' for the reverberant field.
 */
export function chainImpedance(
  chain: SupportChain,
  ends: ChainEnds,
  f_Hz: number,
  leaves: FastenedLeaves,
  constants: ModelConstants,
  out: ChainImpedance,
): ChainImpedance {
  const omega = 2 * Math.PI * f_Hz;
  const eta = constants.bayLossFactor;
  if (leaves === 'framed')
    fasteningMobility(chain.upper, ends.upperBending_Nm, ends.upperMass_kg_m2, eta, omega, mobility);
  else infinitePlateMobility(chain.upper, ends.upperBending_Nm, ends.upperMass_kg_m2, omega, mobility);
  const c1Re = mobility.re;
  const c1Im = mobility.im;
  const overLimit = f_Hz / constants.joistInertiaLimit_Hz;
  const zm = (omega * chain.joistMass_kg_m2) / (1 + overLimit * overLimit);
  // D = 1 + c1 · j zm
  const dRe = 1 - c1Im * zm;
  const dIm = c1Re * zm;
  if (!chain.lower) {
    // A free end: z11 = j zm / D
    const size = dRe * dRe + dIm * dIm;
    out.z11Re = (zm * dIm) / size;
    out.z11Im = (zm * dRe) / size;
    out.z12Re = out.z12Im = out.z22Re = out.z22Im = 0;
    if (chain.edges) addRigidLink(chain.edges, ends, omega, eta, out);
    return out;
  }
  if (leaves === 'framed')
    fasteningMobility(chain.lower, ends.lowerBending_Nm, ends.lowerMass_kg_m2, eta, omega, mobility);
  else infinitePlateMobility(chain.lower, ends.lowerBending_Nm, ends.lowerMass_kg_m2, omega, mobility);
  let csRe = mobility.re;
  let csIm = mobility.im;
  if (chain.spring) {
    const { stiffness_N_m3, exponent } = chain.spring;
    const stiffness = stiffness_N_m3 * (exponent === undefined ? 1 : 1 + (f_Hz / SPRING_KNEE_HZ) ** exponent);
    const loss = constants.supportLossFactor;
    const size = (stiffness * (1 + loss * loss)) / omega;
    csRe += loss / size;
    csIm += 1 / size;
  }
  // A = 1 + j zm cs; C = c1 + D cs
  const aRe = 1 - zm * csIm;
  const aIm = zm * csRe;
  const cRe = c1Re + dRe * csRe - dIm * csIm;
  const cIm = c1Im + dRe * csIm + dIm * csRe;
  const size = cRe * cRe + cIm * cIm;
  out.z12Re = cRe / size;
  out.z12Im = -cIm / size;
  out.z11Re = aRe * out.z12Re - aIm * out.z12Im;
  out.z11Im = aRe * out.z12Im + aIm * out.z12Re;
  out.z22Re = dRe * out.z12Re - dIm * out.z12Im;
  out.z22Im = dRe * out.z12Im + dIm * out.z12Re;
  return out;
}

/** Two leaves that share lines of fastening beside the chain: 1/(1/K_up + 1/K_low) in every entry. */
function addRigidLink(
  lattice: Lattice,
  { upperBending_Nm, upperMass_kg_m2, lowerBending_Nm, lowerMass_kg_m2 }: ChainEnds,
  omega: number,
  eta: number,
  out: ChainImpedance,
): void {
  fasteningMobility(lattice, upperBending_Nm, upperMass_kg_m2, eta, omega, mobility);
  const upRe = mobility.re;
  const upIm = mobility.im;
  fasteningMobility(lattice, lowerBending_Nm, lowerMass_kg_m2, eta, omega, mobility);
  const re = upRe + mobility.re;
  const im = upIm + mobility.im;
  const size = re * re + im * im;
  out.z11Re += re / size;
  out.z11Im -= im / size;
  out.z12Re = re / size;
  out.z12Im = -im / size;
  out.z22Re = re / size;
  out.z22Im = -im / size;
}

const mobility: Complex = { re: 0, im: 0 };
