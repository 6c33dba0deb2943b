import { type AirInBays, insideKx2 } from './air-in-bays.ts';
import { cavityLossFactor } from './cavity-loss.ts';
import { chainEnds } from './chain-ends.ts';
import { type ChainImpedance, chainImpedance, type FastenedLeaves } from './chain-impedance.ts';
import { type FluidMedium, fibreMedium, lossyAir } from './fibre.ts';
import type { CavityModel, FloorModel } from './floor-model.ts';
import { FLUID_NUMBERS, prepareFluidLayer } from './fluid-layer.ts';
import { fluidStack } from './fluid-stack.ts';
import { type PlateState, plateAt } from './leaf-plate.ts';
import { drainsWhenStruck, struckExtraLoss } from './struck-extra-loss.ts';
import type { SupportChain } from './supports.ts';

/**
 * Transfer matrices of the whole floor, marched as one vector (p, v) from the lower room up.
 *
 * Source: Allard & Atalla, Propagation of Sound in Porous Media, 2nd ed. 2009, ch. 11. Time factor e^{+jωt}, p and v
 * positive downward. Leaf [1 Z; 0 1], Z = jωm'(1 − (f/fc)²(1+jη) s⁴) with s = k/k0; mat [1 0; jω/(s'(1+jη)) 1]; fluid
 * layer by k, Zc and kz = √(k² − k0²s²), Im kz ≤ 0. The impedance matrix of the supports is added to the cavity's.
 *
 * `prepare` once per frequency and `at` once per wave number; then `march` fills `velocity2`, `impedance` and `force2` for
 * airborne sound, with the supports beside the cavities' air, or for the struck floor, where supports are left to their own
 * path and a deck on joists loses more. Both share everything that costs time. Nothing is allocated but in the constructor.
 */
export class TransmissionLine {
  /** |velocity|² of each leaf per unit of blocked pressure², (m/s)²/Pa². */
  readonly velocity2: Float64Array;
  /** |force|² on the lower leaf through the supports of each interlayer, per m² of floor, per unit of pressure². */
  readonly force2: Float64Array;
  /**
   * Of the wave marched last, real and imaginary part: blocked pressure per velocity of the last leaf, times u², Pa·s/m. Of the
   * struck floor it is smooth over s, and its zeros near the axis are the resonances.
   */
  readonly impedance = new Float64Array(2);
  /** Stiffness and loss of each leaf at the prepared frequency, the struck deck's extra loss not included. */
  readonly states: PlateState[];
  /** Bending stiffness of each leaf in the direction of the wave, N·m. */
  readonly bending_Nm: Float64Array;
  /** Loss factor that each leaf gains while the floor is struck, at the prepared frequency. */
  readonly struckExtraLoss: Float64Array;
  /** Whether airborne sound and hammers meet the same floor: no supports and no extra loss. */
  readonly alike: boolean;
  /** Supports of each interlayer at the prepared frequency. */
  readonly chains: (ChainImpedance | undefined)[];

  readonly #model: FloorModel;
  readonly #leaves: number;
  // Per leaf: Z = bendRe s⁴ + j (mass + bendIm s⁴).
  readonly #mass: Float64Array;
  readonly #bendRe: Float64Array;
  readonly #struckBendRe: Float64Array;
  readonly #bendIm: Float64Array;
  // Per interlayer.
  readonly #isMat: Uint8Array;
  readonly #matRe: Float64Array;
  readonly #matIm: Float64Array;
  readonly #firstFluid: Int32Array;
  readonly #bays: readonly (AirInBays | undefined)[];
  readonly #fluids: Float64Array;
  readonly #velocityRe: Float64Array;
  readonly #velocityIm: Float64Array;
  // Per interlayer: A, B, C, D of the cavity for the wave at hand.
  readonly #matrices: Float64Array;
  readonly #numbers = new Float64Array(NUMBERS);
  #evanescent = false;

  constructor(model: FloorModel) {
    this.#model = model;
    const n = model.plates.length;
    this.#leaves = n;
    this.velocity2 = new Float64Array(n);
    this.force2 = new Float64Array(n);
    this.states = model.plates.map(() => ({ bending_Nm: 0, lossFactor: 0 }));
    this.bending_Nm = new Float64Array(n);
    this.struckExtraLoss = new Float64Array(n);
    this.#mass = new Float64Array(n);
    this.#bendRe = new Float64Array(n);
    this.#struckBendRe = new Float64Array(n);
    this.#bendIm = new Float64Array(n);
    this.#velocityRe = new Float64Array(n);
    this.#velocityIm = new Float64Array(n);
    this.#isMat = new Uint8Array(n);
    this.#matRe = new Float64Array(n);
    this.#matIm = new Float64Array(n);
    this.#matrices = new Float64Array(8 * n);
    this.#firstFluid = new Int32Array(n + 1);
    this.#bays = model.interlayers.map((layer) => (layer.kind === 'cavity' ? layer.bays : undefined));
    let fluids = 0;
    model.interlayers.forEach((layer, i) => {
      this.#firstFluid[i] = fluids;
      if (layer.kind === 'cavity') {
        fluids += layer.fluids.length;
      } else this.#isMat[i] = 1;
      this.#firstFluid[i + 1] = fluids;
    });
    this.#fluids = new Float64Array(fluids * FLUID_NUMBERS);
    this.chains = model.interlayers.map((layer) =>
      layer.kind === 'cavity' && layer.chain
        ? { z11Re: 0, z11Im: 0, z12Re: 0, z12Im: 0, z22Re: 0, z22Im: 0 }
        : undefined,
    );
    this.alike = !drainsWhenStruck(model) && this.chains.every((chain) => chain === undefined);
  }

  /**
   * Sets everything that depends on frequency alone.
   * @param azimuthCos2 cos² of the azimuth between the wave and the stiff direction of orthotropic leaves.
   */
  prepare(f_Hz: number, azimuthCos2: number): this {
    const { air, plates, interlayers } = this.#model;
    const omega = 2 * Math.PI * f_Hz;
    const c = air.soundSpeed_m_s;
    this.#numbers[AT.z0] = air.density_kg_m3 * c;
    const k02 = (omega / c) * (omega / c);
    this.#numbers[AT.k02] = k02;
    struckExtraLoss(this.#model, f_Hz, this.struckExtraLoss);
    for (let i = 0; i < this.#leaves; i++) {
      const plate = plates[i]!;
      const { bending_Nm, lossFactor } = plateAt(plate, f_Hz, this.states[i]!);
      const root = Math.sqrt(plate.alongRatio);
      const turn = root * azimuthCos2 + (1 - azimuthCos2) / root;
      const turned = turn * turn;
      const bend = (bending_Nm * turned * k02 * k02) / omega;
      const mass = omega * plate.surfaceMass_kg_m2;
      this.bending_Nm[i] = bending_Nm * turned;
      this.#mass[i] = mass;
      this.#bendRe[i] = bend * lossFactor;
      this.#struckBendRe[i] = bend * (lossFactor + this.struckExtraLoss[i]!);
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
      if (chain && layer.chain) this.#chain(i, layer.chain, f_Hz, 'framed', chain);
    }
    return this;
  }

  /** Writes the impedances of the supports of interlayer `i`. */
  #chain(i: number, chain: SupportChain, f_Hz: number, leaves: FastenedLeaves, out: ChainImpedance): void {
    const ends = chainEnds(this.#model, this.states, i, chain, f_Hz, leaves);
    chainImpedance(chain, ends, f_Hz, leaves, this.#model.constants, out);
  }

  /**
   * |1/C|² of the supports of interlayer `i` between unbounded leaves: force² on the lower per velocity² of the upper; 0 where
   * nothing but common bearings joins them.
   */
  reverberantCoupling(i: number, f_Hz: number): number {
    const layer = this.#model.interlayers[i]!;
    if (layer.kind === 'mat' || !layer.chain?.lower) return 0;
    this.#chain(i, layer.chain, f_Hz, 'infinite', reverberant);
    const { z12Re, z12Im } = reverberant;
    return z12Re * z12Re + z12Im * z12Im;
  }

  #prepareFluids(layer: CavityModel, f_Hz: number, first: number): void {
    const { air } = this.#model;
    const loss = cavityLossFactor(f_Hz, layer, this.#model);
    layer.fluids.forEach(({ thickness_m, flowResistivity_Pa_s_m2 }, j) => {
      if (flowResistivity_Pa_s_m2 === undefined) lossyAir(f_Hz, loss, air, medium);
      else fibreMedium(f_Hz, flowResistivity_Pa_s_m2, air, medium);
      prepareFluidLayer(medium, thickness_m, this.#fluids, (first + j) * FLUID_NUMBERS);
    });
  }

  /**
   * Takes a wave of wave number `s`·k0. `u` is cos θ for s < 1 (Z0 = ρ0c0/u), and √(s² − 1) with `evanescent` for s > 1
   * (Z0 = jρ0c0/u). u > 0.
   */
  at(s: number, u: number, evanescent: boolean): this {
    const s2 = s * s;
    this.#numbers[AT.s4] = s2 * s2;
    this.#numbers[AT.u] = u;
    this.#evanescent = evanescent;
    for (let i = 0; i + 1 < this.#leaves; i++) {
      if (this.#isMat[i]) continue;
      along[0] = insideKx2(this.#bays[i]!, this.#numbers[AT.k02]! * s2);
      fluidStack(this.#fluids, this.#firstFluid[i]!, this.#firstFluid[i + 1]!, along, this.#matrices, 8 * i);
    }
    return this;
  }

  /**
   * Marches the wave along the floor, for airborne sound or for the struck floor.
   * @param limp As if no leaf had any stiffness.
   */
  march(airborne: boolean, limp = false): void {
    const numbers = this.#numbers;
    const z0 = numbers[AT.z0]!;
    const s4 = limp ? 0 : numbers[AT.s4]!;
    const u = numbers[AT.u]!;
    const bendRe = airborne ? this.#bendRe : this.#struckBendRe;
    const evanescent = this.#evanescent;
    const last = this.#leaves - 1;
    const velocityRe = this.#velocityRe;
    const velocityIm = this.#velocityIm;
    const matrices = this.#matrices;
    let pRe = evanescent ? 0 : z0;
    let pIm = evanescent ? z0 : 0;
    let vRe = u;
    let vIm = 0;
    for (let i = last; ; i--) {
      // Many heavy leaves one above another would overflow when squared. Only ratios count, so that all may shrink.
      if (Math.abs(pRe) + Math.abs(pIm) > LARGE) {
        pRe /= LARGE;
        pIm /= LARGE;
        vRe /= LARGE;
        vIm /= LARGE;
        for (let j = i + 1; j <= last; j++) {
          velocityRe[j]! /= LARGE;
          velocityIm[j]! /= LARGE;
        }
      }
      velocityRe[i] = vRe;
      velocityIm[i] = vIm;
      const zRe = bendRe[i]! * s4;
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
      const at = 8 * layer;
      const aRe = matrices[at]!;
      const aIm = matrices[at + 1]!;
      const cRe = matrices[at + 4]!;
      const cIm = matrices[at + 5]!;
      const dRe = matrices[at + 6]!;
      const dIm = matrices[at + 7]!;
      const chain = airborne ? this.chains[layer] : undefined;
      const bRe = matrices[at + 2]!;
      const bIm = matrices[at + 3]!;
      if (!chain) {
        const upRe = aRe * pRe - aIm * pIm + bRe * vRe - bIm * vIm;
        const upIm = aRe * pIm + aIm * pRe + bRe * vIm + bIm * vRe;
        const upVRe = cRe * pRe - cIm * pIm + dRe * vRe - dIm * vIm;
        vIm = cRe * pIm + cIm * pRe + dRe * vIm + dIm * vRe;
        vRe = upVRe;
        pRe = upRe;
        pIm = upIm;
        continue;
      }
      // The impedance matrix of the air, A/C, 1/C, D/C, and that of the supports added; with AD − BC = 1 that is
      // v' = (C p + (D + C z22) v)/(1 + C z12), p' = (A p + (B + A z22 − z12) v)/(1 + C z12) + z11 v' − z12 v.
      const { z11Re, z11Im, z12Re, z12Im, z22Re, z22Im } = chain;
      const sumRe = 1 + cRe * z12Re - cIm * z12Im;
      const sumIm = cRe * z12Im + cIm * z12Re;
      const size = 1 / (sumRe * sumRe + sumIm * sumIm);
      const withRe = pRe + z22Re * vRe - z22Im * vIm;
      const withIm = pIm + z22Re * vIm + z22Im * vRe;
      const nRe = cRe * withRe - cIm * withIm + dRe * vRe - dIm * vIm;
      const nIm = cRe * withIm + cIm * withRe + dRe * vIm + dIm * vRe;
      const forceRe = z12Re * vRe - z12Im * vIm;
      const forceIm = z12Re * vIm + z12Im * vRe;
      const mRe = aRe * withRe - aIm * withIm + bRe * vRe - bIm * vIm - forceRe;
      const mIm = aRe * withIm + aIm * withRe + bRe * vIm + bIm * vRe - forceIm;
      const upVRe = (nRe * sumRe + nIm * sumIm) * size;
      const upVIm = (nIm * sumRe - nRe * sumIm) * size;
      pRe = (mRe * sumRe + mIm * sumIm) * size + z11Re * upVRe - z11Im * upVIm - forceRe;
      pIm = (mIm * sumRe - mRe * sumIm) * size + z11Re * upVIm + z11Im * upVRe - forceIm;
      vRe = upVRe;
      vIm = upVIm;
    }
    // Blocked pressure that keeps this motion going: p_top + Z0 v_top.
    const zu = z0 / u;
    const blockedRe = pRe + (evanescent ? -zu * vIm : zu * vRe);
    const blockedIm = pIm + (evanescent ? zu * vRe : zu * vIm);
    this.impedance[0] = blockedRe * u;
    this.impedance[1] = blockedIm * u;
    const scale = 1 / (blockedRe * blockedRe + blockedIm * blockedIm);
    for (let i = 0; i <= last; i++) {
      this.velocity2[i] = scale * (velocityRe[i]! * velocityRe[i]! + velocityIm[i]! * velocityIm[i]!);
    }
    if (!airborne) return;
    for (let i = 0; i < last; i++) {
      const chain = this.chains[i];
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
}

/**
 * Where a line keeps its numbers, u and s⁴ of the wave at hand among them. March reads them tens of thousands of times in one
 * prediction: from fields of their own, each reading puts a number on the heap, and predictions take 5 to 10 % longer (measured).
 */
const AT = { z0: 0, s4: 1, u: 2, k02: 3 };
const NUMBERS = 4;

/** Larger pressures are scaled down, and velocities with them. */
const LARGE = 1e60;

/** kx² in the cavity at hand, rad²/m². */
const along = new Float64Array(1);
const medium: FluidMedium = { kRe: 0, kIm: 0, zcRe: 0, zcIm: 0 };
const reverberant: ChainImpedance = { z11Re: 0, z11Im: 0, z12Re: 0, z12Im: 0, z22Re: 0, z22Im: 0 };
