import type { Leak } from './construction.ts';

/** Where a side is this narrow no air flows: it is less than the distance that molecules fly. */
const CLOSED_m = 1e-9;

/** Opening area of a leak, m²; 0 for one that lets nothing through. */
export function leakArea_m2({ width_m, length_m }: Leak): number {
  if (Math.min(width_m, length_m ?? Infinity) < CLOSED_m) return 0;
  return length_m === undefined ? (Math.PI * width_m ** 2) / 4 : width_m * length_m;
}
