import { Airborne } from './airborne.ts';
import { type Azimuth, azimuths } from './azimuths.ts';
import { bayResonance_Hz } from './bay-resonance.ts';
import { DAMPED_SHARE, filledShare, firstAcross_Hz } from './cavity-resonances.ts';
import { CrowdedNodes } from './crowded-nodes.ts';
import { FastWaves } from './fast-waves.ts';
import type { FloorModel } from './floor-model.ts';
import { type FrequencyPeak, frequencyNodes, isNear } from './frequency-nodes.ts';
import { frequencyPeaks } from './frequency-peaks.ts';
import { Impact } from './impact.ts';
import type { Quadrature } from './quadrature.ts';
import { ReverberantField } from './reverberant-field.ts';
import { type Integrand, SettledSum } from './settled-sum.ts';
import { type ExactBand, exactBandOf } from './standards/iec-61260.ts';

/**
 * From this many times the resonance of hammer and surface on, blow and rebound beat about once in a band or two; a band
 * needs more points from there, and still more where they beat faster, until the beat is faint: beyond, a few points stay
 * within about 0.1 dB.
 */
const BEATING = 2;
const BEATING_FAST = 5;
const BEATEN_OUT = 15;
const MORE_POINTS_PER_TEN = 3;

/** By how much more points see what ripples over a band; our own. */
const RIPPLED = 1.25;

/** A doubtful peak that would add less than this share to its band gets no points of its own. */
const FAINT = 0.01;

/** A doubtful step is seen from this many half-widths before and behind; lower ones get no points, ln of energy. */
const ASIDE = 4;
const LOW_STEP = 0.05;

/** What passes at one frequency or in one band: transmission coefficients, and power of the struck floor per ln f, W. */
export interface Energies {
  readonly direct: number;
  readonly supports: number;
  readonly struckDirect: number;
  readonly struckSupports: number;
}

/** Where each stands in a sum: first what must settle, all airborne and all struck sound. */
const AT = { airborne: 0, struck: 1, direct: 2, supports: 3, struckDirect: 4, struckSupports: 5 };
const WATCHED = 2;
const NUMBERS = 6;

/** Used by one band after another. */
const sharedNodes = new CrowdedNodes();

/**
 * Sums of a floor over the frequencies of each band, airborne and impact from the same waves. τ is the plain mean over
 * log-spaced frequencies; the power of the tapping machine is the integral over them, ∫ W df = ∫ W f d(ln f). Both are
 * averaged over directions where leaves are orthotropic.
 */
export class BandSums implements Integrand {
  readonly #model: FloorModel;
  readonly #quadrature: Quadrature;
  readonly #waves: FastWaves;
  readonly #reverberant: ReverberantField;
  readonly #airborne: Airborne | undefined;
  readonly #impact: Impact;
  readonly #turns: readonly Azimuth[];
  /** From here on energies ripple over a band: leaves screwed to joists swing between them, or an empty cavity rings. */
  readonly #rippling_Hz: number;
  readonly #sum: SettledSum;

  /** @param wanted 'struck' leaves all that is airborne at 0. */
  constructor(model: FloorModel, quadrature: Quadrature, wanted: 'both' | 'struck' = 'both') {
    this.#model = model;
    this.#quadrature = quadrature;
    this.#waves = new FastWaves(model, quadrature, wanted === 'both');
    this.#reverberant = new ReverberantField(model, quadrature);
    this.#airborne = wanted === 'both' ? new Airborne(model, quadrature, this.#reverberant) : undefined;
    this.#impact = new Impact(model, quadrature, this.#reverberant);
    this.#turns = azimuths(model.orthotropic);
    this.#rippling_Hz = Math.min(firstSwing_Hz(model), firstRing_Hz(model));
    this.#sum = new SettledSum(NUMBERS, WATCHED, quadrature.bandTolerance, quadrature.mostBandHalvings);
  }

  /** All bands: first without the doubtful peaks, then again those near a peak that tells. */
  bands(bands_Hz: readonly number[]): readonly Energies[] {
    const edges = bands_Hz.map((band_Hz) => exactBandOf(band_Hz));
    const peaks = frequencyPeaks(this.#model);
    const sure = peaks.filter((p) => !p.doubtful);
    const rough = edges.map((band) => this.#band(band, sure));
    const telling = edges.flatMap((band, i) =>
      peaks.filter((p) => p.doubtful && isInside(p, band) && this.#tells(p, band, rough[i]!)),
    );
    return edges.map((band, i) =>
      telling.some((p) => isNear(p, band)) ? this.#band(band, [...sure, ...telling]) : rough[i]!,
    );
  }

  #tells({ frequency_Hz, relativeWidth, doubtful }: FrequencyPeak, edges: ExactBand, rough: Energies): boolean {
    if (doubtful === 'step') {
      const before = this.#at(frequency_Hz * (1 - ASIDE * relativeWidth));
      const after = this.#at(frequency_Hz * (1 + ASIDE * relativeWidth));
      const step = Math.log(struckOf(after) / struckOf(before));
      return Math.abs(step) > LOW_STEP || Math.abs(Math.log(this.#airborneRatio(after, before))) > LOW_STEP;
    }
    // A Lorentzian holds π times its half-width times its height.
    const logWidth = Math.log(edges.upper_Hz / edges.lower_Hz);
    const top = this.#at(frequency_Hz);
    const struck = (struckOf(top) * logWidth) / struckOf(rough);
    const height = Math.max(struck, this.#airborneRatio(top, rough)) - 1;
    return Math.PI * relativeWidth * height > FAINT * logWidth;
  }

  #airborneRatio(a: Energies, b: Energies): number {
    return this.#airborne ? (a.direct + a.supports) / (b.direct + b.supports) : 1;
  }

  #at(f_Hz: number): Energies {
    const numbers = new Float64Array(NUMBERS);
    this.#evaluateAt(f_Hz, numbers, 0);
    return energies(numbers, 1);
  }

  #band(edges: ExactBand, peaks: readonly FrequencyPeak[]): Energies {
    const { frequencies, peakFrequencies } = this.#quadrature;
    const beats = edges.lower_Hz / this.#impact.contactResonance_Hz;
    const fast = beats > BEATING_FAST && beats < BEATEN_OUT;
    const share = edges.upper_Hz > this.#rippling_Hz ? RIPPLED : 1;
    const smooth = Math.ceil(frequencies * share);
    const finer = Math.ceil(peakFrequencies * share) + (fast ? MORE_POINTS_PER_TEN * Math.ceil(beats / 10) : 0);
    // Of orthotropic leaves waves in some direction always run about as fast as sound.
    const uneven = this.#model.orthotropic || (beats > BEATING && beats < BEATEN_OUT);
    const nodes = frequencyNodes(sharedNodes, edges, peaks, uneven ? finer : smooth, finer);
    const { sums } = this.#sum.over(nodes, this).settle(nodes, this);
    return energies(sums, Math.log(edges.upper_Hz / edges.lower_Hz));
  }

  /** At each ln f. */
  evaluate(logFrequency: Float64Array, count: number, out: Float64Array): void {
    for (let j = 0; j < count; j++) this.#evaluateAt(Math.exp(logFrequency[j]!), out, j * NUMBERS);
  }

  #evaluateAt(f_Hz: number, out: Float64Array, at: number): void {
    out.fill(0, at, at + NUMBERS);
    for (const turn of this.#turns) {
      this.#waves.prepare(f_Hz, turn.cos2);
      this.#reverberant.prepare(f_Hz, this.#waves);
      const beside = this.#impact.prepare(f_Hz, this.#waves);
      this.#waves.sum(beside);
      if (this.#airborne) {
        const through = this.#airborne.at(f_Hz, this.#waves);
        out[at + AT.direct]! += turn.weight * (through.forced + through.resonant);
        out[at + AT.supports]! += turn.weight * through.supports;
      }
      const struck = this.#impact.at(f_Hz, this.#waves);
      out[at + AT.struckDirect]! += turn.weight * f_Hz * struck.direct;
      out[at + AT.struckSupports]! += turn.weight * f_Hz * struck.supports;
    }
    out[at + AT.airborne] = out[at + AT.direct]! + out[at + AT.supports]!;
    out[at + AT.struck] = out[at + AT.struckDirect]! + out[at + AT.struckSupports]!;
  }
}

/** @param logWidth What τ is averaged over: ∫ τ d(ln f) is divided by it. */
function energies(sums: Float64Array, logWidth: number): Energies {
  return {
    direct: sums[AT.direct]! / logWidth,
    supports: sums[AT.supports]! / logWidth,
    struckDirect: sums[AT.struckDirect]!,
    struckSupports: sums[AT.struckSupports]!,
  };
}

/** First resonance of a leaf between the joists that it is screwed to on both sides of a cavity; Infinity without. */
function firstSwing_Hz({ interlayers, plates }: FloorModel): number {
  return interlayers.reduce((first, layer, i) => {
    if (layer.kind === 'mat' || layer.cavity.support !== 'direct' || !layer.chain) return first;
    const { line_m } = layer.chain.upper;
    return Math.min(first, bayResonance_Hz(plates[i]!, line_m), bayResonance_Hz(plates[i + 1]!, line_m));
  }, Infinity);
}

/** First resonance across a cavity that hardly any fill damps; Infinity without. */
function firstRing_Hz({ interlayers, air }: FloorModel): number {
  return interlayers.reduce((first, layer) => {
    if (layer.kind === 'mat' || filledShare(layer) > DAMPED_SHARE) return first;
    return Math.min(first, firstAcross_Hz(layer, air));
  }, Infinity);
}

function isInside({ frequency_Hz }: FrequencyPeak, { lower_Hz, upper_Hz }: ExactBand): boolean {
  return frequency_Hz > lower_Hz && frequency_Hz <= upper_Hz;
}

function struckOf({ struckDirect, struckSupports }: Energies): number {
  return struckDirect + struckSupports;
}
