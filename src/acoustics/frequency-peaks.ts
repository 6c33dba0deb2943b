import { cavityLossFactor } from './cavity-loss.ts';
import { cavityPeaks } from './cavity-peaks.ts';
import { CoincidenceCourse, type Crossing } from './coincidence-course.ts';
import type { FloorModel } from './floor-model.ts';
import type { FrequencyPeak } from './frequency-nodes.ts';
import { mostRadiation } from './panel-radiation.ts';
import { bounceResonances } from './resonances.ts';
import { resonantRadiation } from './resonant-radiation.ts';

/** Relative half-width of leaves bouncing on their springs, at most: our own, of the order of the springs' loss. */
const BOUNCE_WIDTH = 0.05;

/**
 * Where transmission changes fast: where each leaf's bending waves run as fast as sound or as another leaf's, where its
 * stiffness has a kink or its radiation reaches the cap, the leaves bouncing on their springs, and what empty cavities do.
 */
export function frequencyPeaks(model: FloorModel): FrequencyPeak[] {
  const course = new CoincidenceCourse(model);
  return [
    ...coincidences(model, course),
    ...firstLeaf(course),
    ...equalLeaves(model, course),
    ...course.kinks_Hz.map(kink),
    ...radiationCaps(model, course),
    ...bounces(model),
    ...cavityPeaks(model, course),
  ];
}

/** Where f = fc(f). */
function coincidences({ plates }: FloorModel, course: CoincidenceCourse): FrequencyPeak[] {
  return plates.flatMap((_, leaf) =>
    course
      .crossings(course.free[leaf]!, (x) => course.freeAt(leaf, x))
      .map((crossing) => resonance(crossing, course.freeLoss(leaf, crossing.logFrequency))),
  );
}

/** Where the first leaf of a floating floor would meet sound by itself: its reverberant field counts up to there. */
function firstLeaf(course: CoincidenceCourse): FrequencyPeak[] {
  if (!course.joined) return [];
  return course
    .crossings(course.logRatio[0]!, (x) => course.at(0, x))
    .map((crossing) => resonance(crossing, course.loss(0, crossing.logFrequency)));
}

/** Where two leaves have the same fc: their waves meet sound at the same angle, or are equally slow. */
function equalLeaves({ plates }: FloorModel, course: CoincidenceCourse): FrequencyPeak[] {
  return plates.flatMap((_, leaf) => {
    if (leaf === 0) return [];
    const one = course.logRatio[leaf - 1]!;
    const other = course.logRatio[leaf]!;
    return course
      .crossings(
        one.map((y, j) => y - other[j]!),
        (x) => course.at(leaf - 1, x) - course.at(leaf, x),
      )
      .map((crossing) => {
        const { logFrequency } = crossing;
        return resonance(crossing, course.loss(leaf - 1, logFrequency) + course.loss(leaf, logFrequency));
      });
  });
}

/** Where the resonant radiation efficiency of a leaf reaches its cap below fc: a kink. */
function radiationCaps(model: FloorModel, course: CoincidenceCourse): FrequencyPeak[] {
  return model.plates.flatMap((_, leaf) => {
    const edges = model.leafEdges[leaf]!;
    const capped = (x: number, logRatio: number): boolean => {
      if (logRatio >= 0) return true;
      const f_Hz = Math.exp(x);
      const fc_Hz = f_Hz / Math.exp(logRatio);
      const { soundSpeed_m_s } = model.air;
      return resonantRadiation(f_Hz, fc_Hz, edges, soundSpeed_m_s) >= mostRadiation(f_Hz, fc_Hz, edges, soundSpeed_m_s);
    };
    return course.changes(leaf, capped).map((x) => kink(Math.exp(x)));
  });
}

/** The leaves on their springs: half-width by the loss of the springs that are damped least. */
function bounces(model: FloorModel): FrequencyPeak[] {
  return bounceResonances(model).map(({ frequency_Hz }) => {
    const losses = model.interlayers.map((layer) =>
      layer.kind === 'mat' ? layer.mat.lossFactor : cavityLossFactor(frequency_Hz, layer, model),
    );
    return { frequency_Hz, relativeWidth: Math.min(BOUNCE_WIDTH, ...losses.map((loss) => loss / 2)) };
  });
}

/** A loss factor is twice the relative half-width of a resonance; the crossing passes so fast. */
function resonance({ logFrequency, slope }: Crossing, lossFactor: number): FrequencyPeak {
  return peak(logFrequency, lossFactor / 2 / Math.abs(slope));
}

function peak(logFrequency: number, relativeWidth: number): FrequencyPeak {
  return { frequency_Hz: Math.exp(logFrequency), relativeWidth };
}

/** No peak, but smooth only on either side. */
function kink(frequency_Hz: number): FrequencyPeak {
  return { frequency_Hz, relativeWidth: Infinity };
}
