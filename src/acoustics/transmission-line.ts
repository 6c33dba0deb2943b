import { type ChainEnds, type ChainImpedance, chainImpedance } from './chain-impedance.ts';
import { cavityLossFactor, type FluidMedium, fibreMedium, lossyAir } from './fibre.ts';
import type { CavityModel, FloorModel } from './floor-model.ts';
import { type PlateState, plateAt } from './leaf-plate.ts';

/** Below it x² /2 ends the series of cos x to 1e-11. */
const SMALL = 4e-3;

/** Bays without end. */
const FREE = 1e30;

/** The largest e-folding across one fluid layer: e^−60 is 520 dB, beyond it nothing is left to count. */
const MOST_DECAY = 60;

export interface LineOptions {
  /** Whether the supports stand beside the cavities' air (airborne) or are left to their own path (impact). */
  readonly supports: boolean;
  /** Loss factor added to the uppermost leaf. */
  readonly extraLoss: number;
  /** cos² of the azimuth between the wave and the stiff direction of orthotropic leaves. */
  readonly azimuthCos2: number;
}

/**
 * Transfer matrices of the whole floor, marched as one vector (p, v) from the lower room up.
 *
 * Source: Allard & Atalla, Propagation of Sound in Porous Media, 2nd ed. 2009, ch. 11. Time factor e^{+jωt}, p and v
 * positive downward. Leaf [1 Z; 0 1], Z = jωm'(1 − (f/fc)²(1+jη) s⁴) with s = k/k0; mat [1 0; jω/(s'(1+jη)) 1]; fluid
 * layer by k, Zc and kz = √(k² − k0²s²), Im kz ≤ 0. The impedance matrix of the supports is added to the cavity's.
 *
 * `prepare` once per frequency; then `at` for each wave number fills `velocity2`, `force2`. Nothing is allocated in `at`.
 */
export class TransmissionLine {
  /** |velocity|² of each leaf per unit of blocked pressure², (m/s)²/Pa². */
  readonly velocity2: Float64Array;
  /** |force|² on the lower leaf through the supports of each interlayer, per m² of floor, per unit of pressure². */
  readonly force2: Float64Array;
  /** Stiffness and loss of each leaf at the prepared frequency, the extra loss not included. */
  readonly states: PlateState[];
  /** Bending stiffness of each leaf in the direction of the wave, N·m. */
  readonly bending_Nm: Float64Array;
  /** (f/fc)² of each leaf in the direction of the wave, times sin⁴θ the bending part of its impedance. */
  readonly coincidence2: Float64Array;
  /** Loss factor of each leaf, the extra loss included. */
  readonly loss: Float64Array;
  /** Supports of each interlayer at the prepared frequency. */
  readonly chains: (ChainImpedance | undefined)[];

  readonly #model: FloorModel;
  readonly #leaves: number;
  // Per leaf: Z = bendRe s⁴ + j (mass + bendIm s⁴).
  readonly #mass: Float64Array;
  readonly #bendRe: Float64Array;
  readonly #bendIm: Float64Array;
  // Per interlayer.
  readonly #isMat: Uint8Array;
  readonly #matRe: Float64Array;
  readonly #matIm: Float64Array;
  readonly #firstFluid: Int32Array;
  readonly #joined: Uint8Array;
  /** (b/π)⁴ of the bays between joists; without joists so large that waves run freely. */
  readonly #bay4: Float64Array;
  // Per fluid layer: k², Zc·k and 1/|Zc·k|², thickness.
  readonly #k2Re: Float64Array;
  readonly #k2Im: Float64Array;
  readonly #zkRe: Float64Array;
  readonly #zkIm: Float64Array;
  readonly #inverseZk2: Float64Array;
  readonly #thickness: Float64Array;
  readonly #velocityRe: Float64Array;
  readonly #velocityIm: Float64Array;
  #k02 = 0;
  #z0 = 0;

  constructor(model: FloorModel) {
    this.#model = model;
    const n = model.plates.length;
    this.#leaves = n;
    this.velocity2 = new Float64Array(n);
    this.force2 = new Float64Array(n);
    this.states = model.plates.map(() => ({ bending_Nm: 0, lossFactor: 0 }));
    this.bending_Nm = new Float64Array(n);
    this.coincidence2 = new Float64Array(n);
    this.loss = new Float64Array(n);
    this.#mass = new Float64Array(n);
    this.#bendRe = new Float64Array(n);
    this.#bendIm = new Float64Array(n);
    this.#velocityRe = new Float64Array(n);
    this.#velocityIm = new Float64Array(n);
    this.#isMat = new Uint8Array(n);
    this.#matRe = new Float64Array(n);
    this.#matIm = new Float64Array(n);
    this.#joined = new Uint8Array(n);
    this.#bay4 = new Float64Array(n).fill(FREE);
    this.#firstFluid = new Int32Array(n + 1);
    let fluids = 0;
    model.interlayers.forEach((layer, i) => {
      this.#firstFluid[i] = fluids;
      if (layer.kind === 'cavity' && layer.cavity.joists !== 'none') {
        this.#bay4[i] = (layer.cavity.joistSpacing_m / Math.PI) ** 4;
      }
      if (layer.kind === 'cavity') fluids += layer.fluids.length;
      else this.#isMat[i] = 1;
      this.#firstFluid[i + 1] = fluids;
    });
    this.#k2Re = new Float64Array(fluids);
    this.#k2Im = new Float64Array(fluids);
    this.#zkRe = new Float64Array(fluids);
    this.#zkIm = new Float64Array(fluids);
    this.#inverseZk2 = new Float64Array(fluids);
    this.#thickness = new Float64Array(fluids);
    this.chains = model.interlayers.map((layer) =>
      layer.kind === 'cavity' && layer.chain
        ? { z11Re: 0, z11Im: 0, z12Re: 0, z12Im: 0, z22Re: 0, z22Im: 0 }
        : undefined,
    );
  }

  /** Sets everything that depends on frequency alone. */
  prepare(f_Hz: number, { supports, extraLoss, azimuthCos2 }: LineOptions): this {
    const { air, plates, interlayers, constants } = this.#model;
    const omega = 2 * Math.PI * f_Hz;
    const c = air.soundSpeed_m_s;
    this.#z0 = air.density_kg_m3 * c;
    this.#k02 = (omega / c) ** 2;
    for (let i = 0; i < this.#leaves; i++) {
      const plate = plates[i]!;
      const { bending_Nm, lossFactor } = plateAt(plate, f_Hz, constants, this.states[i]!);
      const root = Math.sqrt(plate.alongRatio);
      const turned = (root * azimuthCos2 + (1 - azimuthCos2) / root) ** 2;
      const loss = lossFactor + (i === 0 ? extraLoss : 0);
      const bend = (bending_Nm * turned * omega ** 3) / c ** 4;
      const mass = omega * plate.surfaceMass_kg_m2;
      this.bending_Nm[i] = bending_Nm * turned;
      this.coincidence2[i] = bend / mass;
      this.loss[i] = loss;
      this.#mass[i] = mass;
      this.#bendRe[i] = bend * loss;
      this.#bendIm[i] = -bend;
    }
    for (let i = 0; i < interlayers.length; i++) {
      const layer = interlayers[i]!;
      if (layer.kind === 'mat') {
        const { dynamicStiffness_N_m3: stiffness, lossFactor: eta } = layer.mat;
        const scale = omega / (stiffness * (1 + eta * eta));
        this.#matRe[i] = scale * eta;
        this.#matIm[i] = scale;
        continue;
      }
      this.#prepareFluids(layer, f_Hz, this.#firstFluid[i]!);
      const chain = this.chains[i];
      if (supports && chain && layer.chain)
        chainImpedance(layer.chain, this.#ends(i), f_Hz, 'framed', constants, chain);
      this.#joined[i] = chain && supports ? 1 : 0;
    }
    return this;
  }

  /** What the supports of interlayer `i` are fastened to. */
  #ends(i: number): ChainEnds {
    const { plates } = this.#model;
    return {
      upperBending_Nm: this.states[i]!.bending_Nm,
      upperMass_kg_m2: plates[i]!.surfaceMass_kg_m2,
      lowerBending_Nm: this.states[i + 1]!.bending_Nm,
      lowerMass_kg_m2: plates[i + 1]!.surfaceMass_kg_m2,
    };
  }

  /** |1/C|² of the supports of interlayer `i` between unbounded leaves: force² on the lower per velocity² of the upper. */
  reverberantCoupling(i: number, f_Hz: number): number {
    const layer = this.#model.interlayers[i]!;
    if (layer.kind === 'mat' || !layer.chain) return 0;
    chainImpedance(layer.chain, this.#ends(i), f_Hz, 'infinite', this.#model.constants, reverberant);
    return reverberant.z12Re ** 2 + reverberant.z12Im ** 2;
  }

  #prepareFluids(layer: CavityModel, f_Hz: number, first: number): void {
    const { air, constants } = this.#model;
    const loss = cavityLossFactor(f_Hz, layer.depth_m, constants.cavityAbsorption, air);
    layer.fluids.forEach(({ thickness_m, flowResistivity_Pa_s_m2 }, j) => {
      if (flowResistivity_Pa_s_m2 === undefined) lossyAir(f_Hz, loss, air, medium);
      else fibreMedium(f_Hz, flowResistivity_Pa_s_m2, air, medium);
      const { kRe, kIm, zcRe, zcIm } = medium;
      this.#k2Re[first + j] = kRe * kRe - kIm * kIm;
      this.#k2Im[first + j] = 2 * kRe * kIm;
      this.#zkRe[first + j] = zcRe * kRe - zcIm * kIm;
      this.#zkIm[first + j] = zcRe * kIm + zcIm * kRe;
      this.#inverseZk2[first + j] = 1 / (this.#zkRe[first + j]! ** 2 + this.#zkIm[first + j]! ** 2);
      this.#thickness[first + j] = thickness_m;
    });
  }

  /**
   * Marches a wave of wave number `s`·k0 along the floor. `u` is cos θ for s < 1 (Z0 = ρ0c0/u), and √(s² − 1) with
   * `evanescent` for s > 1 (Z0 = jρ0c0/u). u > 0.
   */
  at(s: number, u: number, evanescent: boolean): void {
    const z0 = this.#z0;
    const s2 = s * s;
    const s4 = s2 * s2;
    const kx2 = this.#k02 * s2;
    const last = this.#leaves - 1;
    const velocityRe = this.#velocityRe;
    const velocityIm = this.#velocityIm;
    let pRe = evanescent ? 0 : z0;
    let pIm = evanescent ? z0 : 0;
    let vRe = u;
    let vIm = 0;
    for (let i = last; ; i--) {
      velocityRe[i] = vRe;
      velocityIm[i] = vIm;
      const zRe = this.#bendRe[i]! * s4;
      const zIm = this.#mass[i]! + this.#bendIm[i]! * s4;
      pRe += zRe * vRe - zIm * vIm;
      pIm += zRe * vIm + zIm * vRe;
      if (i === 0) break;
      const layer = i - 1;
      if (this.#isMat[layer]) {
        const gRe = this.#matRe[layer]!;
        const gIm = this.#matIm[layer]!;
        vRe += gRe * pRe - gIm * pIm;
        vIm += gRe * pIm + gIm * pRe;
        continue;
      }
      const chain = this.#joined[layer] ? this.chains[layer] : undefined;
      if (!chain) {
        const end = this.#firstFluid[layer + 1]!;
        const inside = this.#insideKx2(layer, kx2);
        for (let j = this.#firstFluid[layer]!; j < end; j++) {
          this.#fluidLayer(j, inside);
          const upRe = fluid[0]! * pRe - fluid[1]! * pIm + fluid[2]! * vRe - fluid[3]! * vIm;
          const upIm = fluid[0]! * pIm + fluid[1]! * pRe + fluid[2]! * vIm + fluid[3]! * vRe;
          const upVRe = fluid[4]! * pRe - fluid[5]! * pIm + fluid[0]! * vRe - fluid[1]! * vIm;
          vIm = fluid[4]! * pIm + fluid[5]! * pRe + fluid[0]! * vIm + fluid[1]! * vRe;
          vRe = upVRe;
          pRe = upRe;
          pIm = upIm;
        }
        continue;
      }
      this.#cavityMatrix(layer, kx2);
      const aRe = columns[0]!;
      const aIm = columns[1]!;
      const cRe = columns[2]!;
      const cIm = columns[3]!;
      const dRe = columns[6]!;
      const dIm = columns[7]!;
      // Impedance matrix of the air: A/C, 1/C, D/C; that of the supports added.
      const c2 = cRe * cRe + cIm * cIm;
      const y12Re = cRe / c2;
      const y12Im = -cIm / c2;
      const z12Re = y12Re + chain.z12Re;
      const z12Im = y12Im + chain.z12Im;
      const z22Re = dRe * y12Re - dIm * y12Im + chain.z22Re;
      const z22Im = dRe * y12Im + dIm * y12Re + chain.z22Im;
      const z11Re = aRe * y12Re - aIm * y12Im + chain.z11Re;
      const z11Im = aRe * y12Im + aIm * y12Re + chain.z11Im;
      const nRe = pRe + z22Re * vRe - z22Im * vIm;
      const nIm = pIm + z22Re * vIm + z22Im * vRe;
      const size = z12Re * z12Re + z12Im * z12Im;
      const upVRe = (nRe * z12Re + nIm * z12Im) / size;
      const upVIm = (nIm * z12Re - nRe * z12Im) / size;
      pRe = z11Re * upVRe - z11Im * upVIm - z12Re * vRe + z12Im * vIm;
      pIm = z11Re * upVIm + z11Im * upVRe - z12Re * vIm - z12Im * vRe;
      vRe = upVRe;
      vIm = upVIm;
    }
    // Blocked pressure that keeps this motion going: p_top + Z0 v_top.
    const zu = z0 / u;
    const blockedRe = pRe + (evanescent ? -zu * vIm : zu * vRe);
    const blockedIm = pIm + (evanescent ? zu * vRe : zu * vIm);
    const scale = 1 / (blockedRe * blockedRe + blockedIm * blockedIm);
    for (let i = 0; i <= last; i++) {
      this.velocity2[i] = scale * (velocityRe[i]! * velocityRe[i]! + velocityIm[i]! * velocityIm[i]!);
    }
    for (let i = 0; i < last; i++) {
      const chain = this.#joined[i] ? this.chains[i] : undefined;
      if (!chain) continue;
      const upRe = velocityRe[i]!;
      const upIm = velocityIm[i]!;
      const lowRe = velocityRe[i + 1]!;
      const lowIm = velocityIm[i + 1]!;
      const fRe = chain.z12Re * upRe - chain.z12Im * upIm - chain.z22Re * lowRe + chain.z22Im * lowIm;
      const fIm = chain.z12Re * upIm + chain.z12Im * upRe - chain.z22Re * lowIm - chain.z22Im * lowRe;
      this.force2[i] = scale * (fRe * fRe + fIm * fIm);
    }
  }

  /** Joists stop sound across them until half a wave fits into a bay: then, on average, half of kx² is left. */
  #insideKx2(layer: number, kx2: number): number {
    return kx2 * (1 - 0.5 / (1 + this.#bay4[layer]! * kx2 * kx2));
  }

  /** Matrix of all fluid layers of one cavity, column by column (A, C, B, D), into `columns`. */
  #cavityMatrix(layer: number, kx2: number): void {
    const end = this.#firstFluid[layer + 1]!;
    const inside = this.#insideKx2(layer, kx2);
    columns.fill(0);
    columns[0] = 1;
    columns[6] = 1;
    for (let j = this.#firstFluid[layer]!; j < end; j++) {
      this.#fluidLayer(j, inside);
      for (let i = 0; i < 8; i += 4) {
        const pRe = columns[i]!;
        const pIm = columns[i + 1]!;
        const vRe = columns[i + 2]!;
        const vIm = columns[i + 3]!;
        columns[i] = fluid[0]! * pRe - fluid[1]! * pIm + fluid[2]! * vRe - fluid[3]! * vIm;
        columns[i + 1] = fluid[0]! * pIm + fluid[1]! * pRe + fluid[2]! * vIm + fluid[3]! * vRe;
        columns[i + 2] = fluid[4]! * pRe - fluid[5]! * pIm + fluid[0]! * vRe - fluid[1]! * vIm;
        columns[i + 3] = fluid[4]! * pIm + fluid[5]! * pRe + fluid[0]! * vIm + fluid[1]! * vRe;
      }
    }
  }

  /** Matrix of fluid layer `j`, [cos kz d, jZz sin kz d; j sin kz d/Zz, cos kz d], into `fluid`: A = D, B, C. */
  #fluidLayer(j: number, kx2: number): void {
    // kz = √(k² − kx²) = x − jy with y ≥ 0.
    const re2 = this.#k2Re[j]! - kx2;
    const im2 = this.#k2Im[j]!;
    const modulus = Math.sqrt(re2 * re2 + im2 * im2);
    let x: number;
    let y: number;
    if (re2 >= 0) {
      x = Math.sqrt((modulus + re2) / 2);
      y = -im2 / (2 * x);
    } else {
      y = Math.sqrt((modulus - re2) / 2);
      x = -im2 / (2 * y);
    }
    const d = this.#thickness[j]!;
    // Cosine and sine of kz d; where one part hardly turns or fades, two terms of its series do (to 1e-11).
    const decay = Math.min(y * d, MOST_DECAY);
    let cosh: number;
    let sinh: number;
    if (decay < SMALL) {
      const square = decay * decay;
      cosh = 1 + square / 2;
      sinh = decay * (1 + square / 6);
    } else {
      const grow = Math.exp(decay);
      const shrink = 1 / grow;
      cosh = (grow + shrink) / 2;
      sinh = (grow - shrink) / 2;
    }
    const turn = x * d;
    let cos: number;
    let sin: number;
    if (turn < SMALL) {
      const square = turn * turn;
      cos = 1 - square / 2;
      sin = turn * (1 - square / 6);
    } else {
      cos = Math.cos(turn);
      sin = Math.sin(turn);
    }
    // cos(x − jy) = cos x cosh y + j sin x sinh y; sin(x − jy) = sin x cosh y − j cos x sinh y
    fluid[0] = cos * cosh;
    fluid[1] = sin * sinh;
    const sinRe = sin * cosh;
    const sinIm = -cos * sinh;
    // B = j Zc k · sin(kz d)/kz
    const inverse = 1 / modulus;
    const ratioRe = (sinRe * x - sinIm * y) * inverse;
    const ratioIm = (sinIm * x + sinRe * y) * inverse;
    const zkRe = this.#zkRe[j]!;
    const zkIm = this.#zkIm[j]!;
    fluid[2] = -(zkRe * ratioIm + zkIm * ratioRe);
    fluid[3] = zkRe * ratioRe - zkIm * ratioIm;
    // C = j kz sin(kz d) / (Zc k)
    const productRe = sinRe * x + sinIm * y;
    const productIm = sinIm * x - sinRe * y;
    const zk2 = this.#inverseZk2[j]!;
    fluid[4] = (productRe * zkIm - productIm * zkRe) * zk2;
    fluid[5] = (productRe * zkRe + productIm * zkIm) * zk2;
  }
}

const medium: FluidMedium = { kRe: 0, kIm: 0, zcRe: 0, zcIm: 0 };
const reverberant: ChainImpedance = { z11Re: 0, z11Im: 0, z12Re: 0, z12Im: 0, z22Re: 0, z22Im: 0 };
const fluid = new Float64Array(6);
const columns = new Float64Array(8);
