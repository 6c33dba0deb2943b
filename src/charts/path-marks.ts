/** How the paths of the sound are told apart: name, dash of the line, hatch of the area. Never by colour alone. */
import { html, svg, type TemplateResult } from 'lit';
import type { PathName } from '#src/acoustics/prediction.ts';
import { type Area, diagonals, dots } from './hatch-path.ts';

export interface PathMark {
  readonly label: string;
  /** What the sound does, for a key. */
  readonly description: string;
  readonly dash: string;
  /** How dark the area is under its hatch, 0–1. */
  readonly tint: number;
  readonly hatchWidth: number;
  hatch(area: Area): string;
}

export const PATH_NAMES: readonly PathName[] = ['direct', 'supports', 'flanking', 'leaks'];

export const PATH_MARKS: Readonly<Record<PathName, PathMark>> = {
  direct: {
    label: 'direct',
    description: 'straight through leaves and cavities',
    dash: '6 2',
    tint: 0.1,
    hatchWidth: 0,
    hatch: () => '',
  },
  supports: {
    label: 'supports',
    description: 'through joists, channels, clips, screws or common bearings',
    dash: '2 2',
    tint: 0,
    hatchWidth: 0.9,
    hatch: (area) => diagonals(area, 8, 'rising'),
  },
  flanking: {
    label: 'flanking',
    description: 'around by the walls',
    dash: '8 2 2 2',
    tint: 0.2,
    hatchWidth: 2,
    hatch: (area) => dots(area, 5, 1),
  },
  leaks: {
    label: 'leaks',
    description: 'through gaps and holes',
    dash: '1 3',
    tint: 0.04,
    hatchWidth: 0.7,
    hatch: (area) => diagonals(area, 9, 'rising') + diagonals(area, 9, 'falling'),
  },
};

/** A piece of a path's area for the key. */
export function pathSample(path: PathName): TemplateResult {
  const { hatch, hatchWidth, tint } = PATH_MARKS[path];
  const area = { x: 0.5, y: 0.5, width: 35, height: 11 };
  return html`<svg class="line-sample" viewBox="0 0 36 12" width="36" height="12" aria-hidden="true" style="flex: none">
    ${svg`<rect
        x="0.5"
        y="0.5"
        width="35"
        height="11"
        fill="var(--ink)"
        fill-opacity=${tint}
        stroke="var(--ink-soft)"
      ></rect>
      <path
        d=${hatch(area)}
        fill="none"
        stroke="var(--ink-soft)"
        stroke-width=${hatchWidth}
        stroke-linecap="round"
      ></path>`}
  </svg>`;
}
