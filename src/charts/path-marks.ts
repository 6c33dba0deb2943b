/** How the paths of the sound are told apart: name, dash of the line, hatch of the area. Never by colour alone. */
import { html, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import type { PathName } from '#src/acoustics/prediction.ts';

export interface PathMark {
  readonly label: string;
  /** What the sound does, for a key. */
  readonly description: string;
  readonly dash: string;
  /** Strokes of the area's hatch, in a tile of 8 × 8. */
  readonly hatch: string;
  readonly hatchWidth: number;
  /** How dark the area is under its hatch, 0–1. */
  readonly tint: number;
}

export const PATH_NAMES: readonly PathName[] = ['direct', 'supports', 'flanking', 'leaks'];

export const PATH_MARKS: Readonly<Record<PathName, PathMark>> = {
  direct: {
    label: 'direct',
    description: 'straight through leaves and cavities',
    dash: '6 2',
    hatch: '',
    hatchWidth: 0,
    tint: 0.1,
  },
  supports: {
    label: 'supports',
    description: 'through joists, channels, clips or screws',
    dash: '2 2',
    hatch: 'M-2 2l4-4M0 8l8-8M6 10l4-4',
    hatchWidth: 0.9,
    tint: 0,
  },
  flanking: {
    label: 'flanking',
    description: 'around by the walls',
    dash: '8 2 2 2',
    hatch: 'M2 2v.01M6 6v.01',
    hatchWidth: 2.2,
    tint: 0.2,
  },
  leaks: {
    label: 'leaks',
    description: 'through gaps and holes',
    dash: '1 3',
    hatch: 'M0 0l8 8M8 0l-8 8',
    hatchWidth: 0.8,
    tint: 0.05,
  },
};

/** The tile that fills a path's area. `id` must be alone in its shadow root. */
export function pathPattern(path: PathName, id: string): SVGTemplateResult {
  const { hatch, hatchWidth, tint } = PATH_MARKS[path];
  return svg`<pattern id=${id} width="8" height="8" patternUnits="userSpaceOnUse">
    <rect width="8" height="8" fill="var(--paper)"></rect>
    <rect width="8" height="8" fill="var(--ink)" fill-opacity=${tint}></rect>
    <path d=${hatch} fill="none" stroke="var(--ink-soft)" stroke-width=${hatchWidth} stroke-linecap="round"></path>
  </pattern>`;
}

/** A piece of a path's area for the key. */
export function pathSample(path: PathName): TemplateResult {
  const id = `sample-${path}`;
  return html`<svg class="line-sample" viewBox="0 0 36 12" width="36" height="12" aria-hidden="true" style="flex: none">
    ${svg`<defs>${pathPattern(path, id)}</defs>
      <rect x="0.5" y="0.5" width="35" height="11" fill="url(#${id})" stroke="var(--ink-soft)"></rect>`}
  </svg>`;
}
