import { type SVGTemplateResult, svg } from 'lit';
import { bandLabel } from './band-axis.ts';
import type { BandFrame } from './band-frame.ts';

/** The hairline at a band that is read, with the band written over its place on the axis. */
export function bandLine(frame: BandFrame, index: number, kind: 'pinned' | 'pointer'): SVGTemplateResult {
  const x = frame.xOfBand(index);
  return svg`
    <line class=${kind} x1=${x} x2=${x} y1=${frame.top - 2} y2=${frame.bottom + 5}></line>
    <text x=${x} y=${frame.bottom + 17}>${bandLabel(frame.bands_Hz[index]!)}</text>
  `;
}
