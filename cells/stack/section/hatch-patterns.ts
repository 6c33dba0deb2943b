/** Fillings by drafting convention, in pixels so that they look alike at every scale. */
import { type SVGTemplateResult, svg } from 'lit';
import type { Hatch } from './section.ts';

const FILLED: Partial<Record<Hatch, true>> = {
  concrete: true,
  topping: true,
  panel: true,
  timber: true,
  gypsum: true,
  mat: true,
  covering: true,
};

/** The paint of a hatched area; `patterns` must stand in the same picture. */
export function hatchFill(hatch: Hatch): string {
  if (FILLED[hatch]) return `url(#hatch-${hatch})`;
  if (hatch === 'rubber') return 'var(--ink)';
  if (hatch === 'metal') return 'var(--hairline)';
  return 'var(--paper-raised)';
}

export const hatchPatterns: SVGTemplateResult = svg`
  <defs class="hatches">
    <pattern id="hatch-concrete" width="34" height="26" patternUnits="userSpaceOnUse">
      <path d="M5 6l3.2 5h-6.2zM22 15l4.5 2.6l-4.2 2.6z" class="outline"></path>
      <path d="M14 4v.01M27 7v.01M17 10v.01M10 18v.01M31 22v.01M18 24v.01M4 23v.01M31 12v.01" class="dots"></path>
    </pattern>
    <pattern id="hatch-topping" width="13" height="11" patternUnits="userSpaceOnUse">
      <path d="M2 2v.01M8 4v.01M4.5 7.5v.01M11 8.5v.01" class="dots"></path>
    </pattern>
    <pattern id="hatch-panel" width="22" height="6" patternUnits="userSpaceOnUse">
      <path d="M1 1.5h9M14 1.5h5M5 4.5h6M15 4.5h6" class="fine"></path>
    </pattern>
    <pattern id="hatch-timber" width="30" height="8" patternUnits="userSpaceOnUse">
      <path d="M0 2c8-2 14 2 30 0M0 6c10 2 18-2 30 0" class="fine"></path>
    </pattern>
    <pattern id="hatch-gypsum" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d="M0 0v4" class="fine"></path>
    </pattern>
    <pattern id="hatch-mat" width="7" height="7" patternUnits="userSpaceOnUse">
      <path d="M0 0l7 7M7 0l-7 7" class="fine"></path>
    </pattern>
    <pattern id="hatch-covering" width="3" height="6" patternUnits="userSpaceOnUse">
      <path d="M1 0v6" class="fine"></path>
    </pattern>
  </defs>
`;
