import { gaussLegendre } from './gauss-legendre.ts';

/** One direction of waves over the floor: cos² of its angle to the stiff direction, and its share of all directions. */
export interface Azimuth {
  readonly cos2: number;
  readonly weight: number;
}

const EVERY_WAY: readonly Azimuth[] = [{ cos2: 0.5, weight: 1 }];

/** Directions to average over: one where all are alike, Gauss–Legendre points on a quarter circle otherwise. */
export function azimuths(orthotropic: boolean, points = 8): readonly Azimuth[] {
  if (!orthotropic) return EVERY_WAY;
  const { nodes, weights } = gaussLegendre(points);
  return Array.from(nodes, (x, i) => ({ cos2: Math.cos(((x + 1) * Math.PI) / 4) ** 2, weight: weights[i]! / 2 }));
}
