import { angleNodes } from './angle-nodes.ts';
import { CavityResonances } from './cavity-resonances.ts';
import { CrowdedNodes } from './crowded-nodes.ts';
import { type FloorModel, joinsLeaves } from './floor-model.ts';
import { ForcedRadiation } from './forced-radiation.ts';
import { FreeBendingWaves } from './free-bending-waves.ts';
import type { Quadrature } from './quadrature.ts';
import { type Integrand, SettledSum } from './settled-sum.ts';
import { EdgeRadiation, SlowWaveRadiation } from './slow-wave-radiation.ts';
import { supportRadiation } from './support-radiation.ts';
import { joint } from './supports.ts';
import { TransmissionLine } from './transmission-line.ts';

/** Mean square motion under waves faster than sound, all directions alike, per unit of blocked pressure². */
export interface FastSums {
  /** ∫₀¹ |v|² du of each leaf, u = cos θ; empty where nobody asks, see `goesOn`. */
  readonly velocity2: Float64Array;
  /** ∫₀¹ |v_N|² σ(u) du of the last leaf, for the struck floor ∫₀¹ |v_N|² σ(u) u du. */
  radiated: number;
}

/** Used by one sum after another. */
const sharedNodes = new CrowdedNodes();

/** A floor at one frequency: its transfer matrices, and the waves faster than sound, which airborne sound and blows share. */
export class FastWaves implements Integrand {
  readonly line: TransmissionLine;
  readonly forced = new ForcedRadiation();
  /** Of the last leaf. */
  readonly slow = new SlowWaveRadiation();
  /** Of the first leaf: as well as its edges radiate slow waves, sound excites them there. */
  readonly slowFirst: EdgeRadiation;
  readonly free: FreeBendingWaves;
  readonly cavities: CavityResonances;
  /** What each interlayer's lower leaf radiates through its fastenings, W per (N/m²)²; 0 where it has none. */
  readonly supportPower: Float64Array;
  /** Force² on each interlayer's lower leaf per velocity² of the upper leaf's reverberant field; 0 where it has none. */
  readonly reverberantCoupling: Float64Array;
  /** With ∫₀¹ |F|² du through the supports of each interlayer. */
  readonly airborne: FastSums & { readonly force2: Float64Array };
  readonly struck: FastSums;
  readonly #model: FloorModel;
  readonly #points: number;
  readonly #leaves: number;
  /** How many leaves' motions are summed: all, or none where supports give to the last leaf alone. */
  readonly #moving: number;
  readonly #numbers: number;
  readonly #sum: SettledSum;
  readonly #withAirborne: boolean;
  #f_Hz = 0;
  #besideStruck = 0;

  /** @param withAirborne Otherwise all airborne sums stay 0. */
  constructor(model: FloorModel, { angles, tolerance, mostHalvings }: Quadrature, withAirborne: boolean) {
    const leaves = model.plates.length;
    this.#model = model;
    this.#points = angles;
    this.#withAirborne = withAirborne;
    this.#leaves = leaves;
    this.line = new TransmissionLine(model);
    this.free = new FreeBendingWaves(model);
    this.cavities = new CavityResonances(model);
    this.supportPower = new Float64Array(model.interlayers.length);
    this.reverberantCoupling = new Float64Array(model.interlayers.length);
    const oneEdge = model.leafEdges[0] === model.leafEdges[leaves - 1];
    this.slowFirst = oneEdge ? this.slow : new EdgeRadiation();
    const goesOn = model.interlayers.slice(0, -1).some(joinsLeaves);
    this.#moving = goesOn ? leaves : 0;
    this.#numbers = SINGLE + leaves - 1 + 2 * this.#moving;
    this.#sum = new SettledSum(this.#numbers, goesOn ? this.#numbers : WATCHED, tolerance, mostHalvings);
    const { sums } = this.#sum;
    const part = (from: number, numbers: number): Float64Array => sums.subarray(from, from + numbers);
    const velocities = SINGLE + leaves - 1;
    const airborneVelocity2 = part(velocities, this.#moving);
    this.airborne = { velocity2: airborneVelocity2, force2: part(SINGLE, leaves - 1), radiated: 0 };
    this.struck = { velocity2: part(velocities + this.#moving, this.#moving), radiated: 0 };
  }

  /** Takes a frequency and prepares all but the sums: `line`, `forced`, `slow`, `free`, `cavities` and what the supports do. */
  prepare(f_Hz: number, azimuthCos2: number): void {
    this.#f_Hz = f_Hz;
    const { air, edges, leafEdges, interlayers } = this.#model;
    const { line, forced, slow, free, cavities } = this;
    const k0 = (2 * Math.PI * f_Hz) / air.soundSpeed_m_s;
    forced.prepare(k0, edges.area_m2, edges.perimeter_m);
    slow.prepare(k0, leafEdges[this.#leaves - 1]!, forced.at(0));
    if (this.slowFirst !== slow) this.slowFirst.prepare(k0, leafEdges[0]!, forced.at(0));
    line.prepare(f_Hz, azimuthCos2);
    free.at(f_Hz, line.bending_Nm);
    cavities.at(f_Hz);
    for (let i = 0; i < interlayers.length; i++) {
      const layer = interlayers[i]!;
      const lattice = layer.kind === 'mat' ? undefined : joint(layer.chain);
      if (!lattice) continue;
      this.reverberantCoupling[i] = line.reverberantCoupling(i, f_Hz);
      this.supportPower[i] = supportRadiation(this.#model, i + 1, line.states, lattice, f_Hz);
    }
  }

  /**
   * Sums over the waves as prepared, for the struck floor and, where wanted, for airborne sound.
   * @param besideStruck What else of the blows reaches the room below, per what `struck.radiated` is: next to much a little
   *   may err.
   */
  sum(besideStruck: number): void {
    this.#besideStruck = besideStruck;
    const nodes = angleNodes(sharedNodes, this.#model, this, this.#f_Hz, this.#points);
    const { sums } = this.#sum.over(nodes, this).settle(nodes, this);
    this.struck.radiated = sums[AT.struckRadiated]!;
    this.airborne.radiated = sums[AT.radiated]!;
  }

  /**
   * What supports give to a leaf goes on to the last by the ratio of their motions, |v_N|² per |v|² of that leaf; 1 where it
   * is the last or is given nothing.
   */
  goesOn({ velocity2 }: FastSums, leaf: number): number {
    const last = this.#leaves - 1;
    return leaf === last || this.#moving === 0 ? 1 : velocity2[last]! / velocity2[leaf]!;
  }

  /** At each u = cos θ: what airborne and struck sound pass by all paths, and the numbers of the sums. */
  evaluate(cosine: Float64Array, count: number, out: Float64Array): void {
    const { line, forced } = this;
    const { velocity2, force2 } = line;
    const { air } = this.#model;
    const z0 = air.density_kg_m3 * air.soundSpeed_m_s;
    const leaves = this.#leaves;
    const last = leaves - 1;
    const moving = this.#moving;
    const numbers = this.#numbers;
    for (let j = 0; j < count; j++) {
      const u = cosine[j]!;
      const sigma = forced.at(u);
      const at = j * numbers;
      const forceAt = at + SINGLE;
      const airborneAt = forceAt + last;
      const struckAt = airborneAt + moving;
      line.at(Math.sqrt(1 - u * u), u, false).march(false);
      for (let i = 0; i < moving; i++) out[struckAt + i] = velocity2[i]!;
      const struck = sigma * u * velocity2[last]!;
      out[at + AT.struckRadiated] = struck;
      // Over u from 0 to 1 a constant sums to itself.
      out[at + AT.struck] = struck + this.#besideStruck;
      if (!this.#withAirborne) continue;
      if (!line.alike) line.march(true);
      for (let i = 0; i < moving; i++) out[airborneAt + i] = velocity2[i]!;
      for (let i = 0; i < last; i++) out[forceAt + i] = force2[i]!;
      out[at + AT.radiated] = sigma * velocity2[last]!;
      if (u < forced.limit) this.#takeIn(u, sigma, out, at);
      let supports = 0;
      for (let i = 0; i < last; i++) {
        const goesOn = moving === 0 ? 1 : out[airborneAt + last]! / out[airborneAt + i + 1]!;
        supports += out[forceAt + i]! * this.supportPower[i]! * goesOn;
      }
      out[at + AT.airborne] = z0 * out[at + AT.radiated]! + supports;
    }
  }

  /**
   * How well the leaf that matches best does at s = sin θ, 0–1: a wave that its free one runs ahead of by half a turn along the
   * floor does not grow any further, and its ends do not matter.
   */
  #matched(s: number): number {
    const { mu } = this.free;
    let mismatch = Infinity;
    for (let i = 0; i < mu.length; i++) {
      const off = Math.abs(mu[i]! - s);
      if (off < mismatch) mismatch = off;
    }
    const halfTurns = (mismatch * this.forced.size) / Math.PI;
    return 1 / (1 + halfTurns * halfTurns);
  }

  /**
   * Near grazing incidence, of what the leaves' stiffness adds to the motion of limp ones a floor of finite size takes in but
   * a share: what is forced goes as the mass lets it, free waves build up along the floor and meet its ends.
   */
  #takeIn(u: number, sigma: number, out: Float64Array, at: number): void {
    const { line } = this;
    const { velocity2, force2 } = line;
    const lost = (1 - this.forced.taken(u)) * this.#matched(Math.sqrt(1 - u * u));
    if (lost < LITTLE_LOST) return;
    const taken = 1 - lost;
    const last = this.#leaves - 1;
    line.march(!line.alike, true);
    for (let i = 0; i < last; i++) out[at + SINGLE + i] = takenOf(out[at + SINGLE + i]!, force2[i]!, taken);
    out[at + AT.radiated] = takenOf(out[at + AT.radiated]!, sigma * velocity2[last]!, taken);
  }
}

/** What takes less away than this share, 0.01 dB, is not worth a march. */
const LITTLE_LOST = 0.002;

/** Of what is above `limp` the share `taken`. */
function takenOf(whole: number, limp: number, taken: number): number {
  return whole > limp ? limp + (whole - limp) * taken : whole;
}

/** What stands first in a sum: airborne and struck sound by all paths, then what the last leaf radiates of each. */
const AT = { airborne: 0, struck: 1, radiated: 2, struckRadiated: 3 };
const SINGLE = 4;
/** The first two must settle. */
const WATCHED = 2;
