/** Outlines of the scenario markers in a box of 10 × 10 around the origin: the same in charts, keys and chips. */
import type { ScenarioMark } from './scenario-marks.ts';

export interface MarkerPath {
  readonly d: string;
  /** Of the outline in the marker's own colour, px; 0: the shape is filled and edged with the paper. */
  readonly stroke: number;
}

const PATHS: Readonly<Record<ScenarioMark['marker'], MarkerPath>> = {
  circle: { d: 'M-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0-7 0z', stroke: 0 },
  square: { d: 'M-3-3h6v6h-6z', stroke: 0 },
  triangle: { d: 'M0-4.2l4 7h-8z', stroke: 0 },
  diamond: { d: 'M0-4.6l3.2 4.6l-3.2 4.6l-3.2-4.6z', stroke: 0 },
  cross: { d: 'M-3-3l6 6M-3 3l6-6', stroke: 2 },
  star: { d: 'M0-4.8l1.2 3.2h3.4l-2.7 2.1l1 3.4l-2.9-2l-2.9 2l1-3.4l-2.7-2.1h3.4z', stroke: 0 },
  wye: { d: 'M0 0.4v4M0 0.4l-3.6-2.4M0 0.4l3.6-2.4', stroke: 2 },
  plus: { d: 'M0-4.5v9M-4.5 0h9', stroke: 2 },
};

export function markerPath(marker: ScenarioMark['marker']): MarkerPath {
  return PATHS[marker];
}

/** The same outline around another point, without a transform: only its absolute moves change. */
export function markerAround(marker: ScenarioMark['marker'], x: number, y: number): string {
  return PATHS[marker].d.replace(MOVE, (_, dx, dy) => `M${x + Number(dx)} ${y + Number(dy)}`);
}

const MOVE = /M(-?[\d.]+)[ ]?(-?[\d.]+)/g;

/** A hollow marker is drawn larger, so that the hollow shows. */
export function markerScale(hollow: boolean): number {
  return hollow ? 1.25 : 1;
}

/** Attributes of a marker's outline. A hollow one shows the paper inside. */
export function markerPaint({ stroke }: MarkerPath, color: string, hollow: boolean) {
  if (hollow) return { fill: 'var(--paper)', stroke: color, 'stroke-width': 1.4 };
  return stroke
    ? { fill: 'none', stroke: color, 'stroke-width': stroke }
    : { fill: color, stroke: 'var(--paper)', 'stroke-width': 1 };
}
