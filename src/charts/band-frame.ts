/** Where things stand in a band chart: one mapping for the drawn curves and for what follows the pointer. */
import { bandPosition, bandSpan, nominalPosition } from './band-axis.ts';
import type { Range } from './steady-range.ts';

export interface FrameOptions {
  readonly width: number;
  readonly bands_Hz: readonly number[];
  readonly range: Range;
  /** Rows of labels above the curves. */
  readonly topRows: number;
  /** Width kept free for labels at the ends of lines, px. */
  readonly rightLabels: number;
  /** Height of the plotted area, px; absent: by the width. */
  readonly plotHeight?: number;
}

export interface BandFrame extends FrameOptions {
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xDomain: readonly [number, number];
  readonly pixelsPerBand: number;
  xOfBand(index: number): number;
  xOfFrequency(frequency_Hz: number): number;
  y(value_dB: number): number;
  /** Index of the band nearest to x. */
  bandAt(x: number): number;
}

const LABEL_ROW = 15;

export function bandFrame(options: FrameOptions): BandFrame {
  const { width, bands_Hz, range, topRows, rightLabels } = options;
  const positions = bands_Hz.map(nominalPosition);
  const xDomain = bandSpan(bands_Hz);
  const left = 34;
  const top = 26 + topRows * LABEL_ROW;
  const right = width - 6 - rightLabels;
  const plotHeight = options.plotHeight ?? Math.round(Math.min(380, Math.max(220, 0.46 * width)));
  const height = top + plotHeight + 40;
  const bottom = height - 40;
  const scale = (right - left) / (xDomain[1] - xDomain[0]);
  const x = (position: number) => left + (position - xDomain[0]) * scale;
  return {
    ...options,
    height,
    left,
    right,
    top,
    bottom,
    xDomain,
    pixelsPerBand: scale,
    xOfBand: (index) => x(positions[index] ?? xDomain[0]),
    xOfFrequency: (frequency_Hz) => x(bandPosition(frequency_Hz)),
    y: (value_dB) => bottom - ((value_dB - range.low) / (range.high - range.low)) * (bottom - top),
    bandAt(px) {
      const position = xDomain[0] + (px - left) / scale;
      let nearest = 0;
      positions.forEach((p, i) => {
        if (Math.abs(p - position) < Math.abs(positions[nearest]! - position)) nearest = i;
      });
      return nearest;
    },
  };
}
