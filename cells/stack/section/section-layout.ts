import type { Construction } from '#src/acoustics/construction.ts';
import { DIMENSION_WIDTH_px } from './section-drawing.ts';
import { sectionHeight_m, sectionWidth_m } from './section-of.ts';

export interface SectionLayout {
  /** Drawings beside each other. */
  readonly columns: number;
  /** Pixels per metre, the same for all. */
  readonly scale: number;
  /** How much of the floor is drawn, m. */
  readonly width_m: number;
}

const GAP_px = 16;
const NARROWEST_px = 150;
const MOST_px_per_m = 420;
const TALLEST_px = 440;

/** One scale for all sections: as large as the room allows, with two joists of each in the picture. */
export function layOut(constructions: readonly Construction[], count: number, room_px: number): SectionLayout {
  const most = Math.max(1, Math.min(count, Math.floor((room_px + GAP_px) / (NARROWEST_px + GAP_px))));
  const columns = Math.ceil(count / Math.ceil(count / most)); // full rows rather than one long and one short
  const wide_px = (room_px - (columns - 1) * GAP_px) / columns - DIMENSION_WIDTH_px;
  const least_m = sectionWidth_m(constructions);
  const tallest_m = Math.max(0.05, ...constructions.map(sectionHeight_m));
  const scale = Math.min(MOST_px_per_m, TALLEST_px / tallest_m, wide_px / least_m);
  return { columns, scale, width_m: Math.max(least_m, Math.min(1.6, wide_px / scale)) };
}
