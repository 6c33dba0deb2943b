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
/** Of rows that were added, all together with their names: about what a window shows at once. */
const TALLEST_ROWS_px = 600;
/** What stands above and below a section: its name and the air around it. */
const NAME_px = 64;
/** Drawings that are compared stand in one row, unless more rows make them larger by so much. */
const WORTH_A_ROW = 1.3;

/** One scale for all sections: as large as the room allows, with two joists of each in the picture. */
export function layOut(constructions: readonly Construction[], count: number, room_px: number): SectionLayout {
  const least_m = sectionWidth_m(constructions);
  const tallest_m = Math.max(0.05, ...constructions.map(sectionHeight_m));
  const widthIn_px = (columns: number) => (room_px - (columns - 1) * GAP_px) / columns - DIMENSION_WIDTH_px;
  const scaleIn = (columns: number, tall_px: number) =>
    Math.min(MOST_px_per_m, tall_px / tallest_m, widthIn_px(columns) / least_m);
  const most = Math.max(1, Math.min(count, Math.floor((room_px + GAP_px) / (NARROWEST_px + GAP_px))));
  let columns = inFullRows(count, most);
  let scale = scaleIn(columns, TALLEST_px);
  for (let fewer = columns - 1; fewer >= 1; fewer--) {
    const larger = scaleIn(fewer, TALLEST_ROWS_px / Math.ceil(count / fewer) - NAME_px);
    if (inFullRows(count, fewer) !== fewer || larger <= WORTH_A_ROW * scale) continue;
    columns = fewer;
    scale = larger;
  }
  return { columns, scale, width_m: Math.max(least_m, Math.min(1.6, widthIn_px(columns) / scale)) };
}

/** Rather than one long row and one short. */
function inFullRows(count: number, most: number): number {
  return Math.ceil(count / Math.ceil(count / most));
}
