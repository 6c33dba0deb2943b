import type { CrowdedNodes } from './crowded-nodes.ts';
import type { ExactBand } from './standards/iec-61260.ts';

/** A frequency near which transmission changes fast, and over which relative width. */
export interface FrequencyPeak {
  readonly frequency_Hz: number;
  readonly relativeWidth: number;
  /** Tells only sometimes, as a peak or as a step up: worth a trial before it gets points of its own. */
  readonly doubtful?: 'peak' | 'step';
}

/** Whether a peak stands in a band or beyond its edges by less than the band's width. */
export function isNear({ frequency_Hz }: FrequencyPeak, { lower_Hz, upper_Hz }: ExactBand): boolean {
  return frequency_Hz * upper_Hz > lower_Hz * lower_Hz && frequency_Hz * lower_Hz < upper_Hz * upper_Hz;
}

/**
 * Nodes in ln f across one band, broken at the peaks inside it and crowded to them, also to an edge that a peak lies just
 * beyond.
 */
export function frequencyNodes(
  nodes: CrowdedNodes,
  band: ExactBand,
  peaks: readonly FrequencyPeak[],
  plainPoints: number,
  peakPoints: number,
): CrowdedNodes {
  const lower = Math.log(band.lower_Hz);
  const upper = Math.log(band.upper_Hz);
  nodes.begin().breakAt(lower, Infinity).breakAt(upper, Infinity);
  for (const { frequency_Hz, relativeWidth } of peaks) {
    const place = Math.log(frequency_Hz);
    if (place > lower && place < upper) nodes.breakAt(place, relativeWidth);
    else if (place <= lower) nodes.breakAt(lower, Math.max(lower - place, relativeWidth));
    else nodes.breakAt(upper, Math.max(place - upper, relativeWidth));
  }
  return nodes.fill(plainPoints, upper - lower, peakPoints);
}
