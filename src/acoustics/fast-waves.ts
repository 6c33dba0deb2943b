import { angleNodes } from './angle-nodes.ts';
import { CavityResonances } from './cavity-resonances.ts';
import { CrowdedNodes } from './crowded-nodes.ts';
import type { FloorModel } from './floor-model.ts';
import { ForcedRadiation } from './forced-radiation.ts';
import { FreeBendingWaves } from './free-bending-waves.ts';
import { supportRadiation } from './support-radiation.ts';
import { TransmissionLine } from './transmission-line.ts';

/** Mean square motion under waves faster than sound, all directions alike, per unit of blocked pressure². */
export interface FastSums {
  /** ∫₀¹ |v|² du of each leaf, u = cos θ. */
  readonly velocity2: Float64Array;
  /** ∫₀¹ |F|² du through the supports of each interlayer. */
  readonly force2: Float64Array;
  /** ∫₀¹ |v_N|² σ(u) du of the last leaf, for the struck floor ∫₀¹ |v_N|² σ(u) u du. */
  radiated: number;
}

/** Used by one sum after another. */
const sharedNodes = new CrowdedNodes();

/** A floor at one frequency: its transfer matrices, and the waves faster than sound, which airborne sound and blows share. */
export class FastWaves {
  readonly line: TransmissionLine;
  readonly forced = new ForcedRadiation();
  readonly free: FreeBendingWaves;
  readonly cavities: CavityResonances;
  /** What each interlayer's lower leaf radiates through its fastenings, W per (N/m²)²; 0 where it has none. */
  readonly supportPower: Float64Array;
  /** Force² on each interlayer's lower leaf per velocity² of the upper leaf's reverberant field; 0 where it has none. */
  readonly reverberantCoupling: Float64Array;
  readonly airborne: FastSums;
  readonly struck: FastSums;
  readonly #model: FloorModel;
  readonly #points: number;

  constructor(model: FloorModel, pointsPerPiece: number) {
    this.#model = model;
    this.#points = pointsPerPiece;
    this.line = new TransmissionLine(model);
    this.free = new FreeBendingWaves(model);
    this.cavities = new CavityResonances(model);
    this.supportPower = new Float64Array(model.interlayers.length);
    this.reverberantCoupling = new Float64Array(model.interlayers.length);
    this.airborne = noSums(model.plates.length);
    this.struck = noSums(model.plates.length);
  }

  /**
   * Prepares `line`, `forced`, `free` and `cavities`, and sums over the waves: for the struck floor, and unless told otherwise
   * for airborne sound.
   */
  at(f_Hz: number, azimuthCos2: number, withAirborne = true): this {
    const { air, edges, interlayers } = this.#model;
    const { line, forced, free, cavities, airborne, struck } = this;
    forced.prepare((2 * Math.PI * f_Hz) / air.soundSpeed_m_s, edges.area_m2, edges.perimeter_m);
    line.prepare(f_Hz, azimuthCos2);
    free.at(f_Hz, line.bending_Nm);
    cavities.at(f_Hz, free.mu);
    for (let i = 0; i < interlayers.length; i++) {
      const layer = interlayers[i]!;
      if (layer.kind === 'mat' || !layer.chain?.lower) continue;
      this.reverberantCoupling[i] = line.reverberantCoupling(i, f_Hz);
      this.supportPower[i] = supportRadiation(this.#model, i + 1, line.states[i + 1]!, layer.chain.lower, f_Hz);
    }
    const nodes = angleNodes(sharedNodes, this.#model, this, f_Hz, this.#points);
    clear(airborne);
    clear(struck);
    const { x, weight, count } = nodes;
    for (let j = 0; j < count; j++) {
      const u = x[j]!;
      const sigma = forced.at(u);
      line.at(Math.sqrt(1 - u * u), u, false).march(false);
      add(struck, line, weight[j]!, sigma * u);
      if (!withAirborne) continue;
      if (!line.alike) line.march(true);
      add(airborne, line, weight[j]!, sigma);
    }
    return this;
  }
}

function noSums(leaves: number): FastSums {
  return { velocity2: new Float64Array(leaves), force2: new Float64Array(leaves), radiated: 0 };
}

function clear(sums: FastSums): void {
  sums.velocity2.fill(0);
  sums.force2.fill(0);
  sums.radiated = 0;
}

function add(sums: FastSums, { velocity2, force2 }: TransmissionLine, weight: number, sigma: number): void {
  const last = velocity2.length - 1;
  for (let i = 0; i <= last; i++) sums.velocity2[i]! += weight * velocity2[i]!;
  for (let i = 0; i < last; i++) sums.force2[i]! += weight * force2[i]!;
  sums.radiated += weight * sigma * velocity2[last]!;
}
