import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';
import { USUAL_SPACING_m } from '#src/acoustics/supports.ts';
import { type CavityPlace, SCREW_IN_JOIST_m } from './cavity-shapes.ts';
import type { Box, Line, Shape } from './section.ts';

/** Sizes of the hardware, m, where the construction gives none. Common practice, no source. */
const HARDWARE_m = {
  furring: 0.022,
  clipWidth: 0.05,
  rubberWidth: 0.025,
  springWidth: 0.03,
  springHeight: 0.045,
  ceilingJoistHighest: 0.14,
};

/**
 * What holds the lower leaf, in elevation as a cut across the joists shows it: channels run along the section, clips and
 * hangers stand at their spacing, screws at every joist or along the channel.
 */
export function supportShapes(place: CavityPlace, joists: readonly number[]): readonly Shape[] {
  const { cavity } = place;
  switch (cavity.support) {
    case 'direct':
      return boardScrews(place, joists, SCREW_IN_JOIST_m);
    case 'resilient-channel':
      return channel(place, joists);
    case 'clips':
      return clips(place, joists);
    case 'hangers':
      return hangers(place, joists);
    case 'separate-joists':
      return ceilingJoists(place);
  }
}

/** Underside of the joists, or of the gap where there are none; and the upper face of the lower leaf. */
function levels({ cavity, top_m }: CavityPlace): { joist: number; board: number } {
  return { joist: top_m + cavity.depth_m, board: top_m + cavityDepth_m(cavity) };
}

function channel(place: CavityPlace, joists: readonly number[]): readonly Shape[] {
  const { joist, board } = levels(place);
  const { width_m, cavity, layer } = place;
  const crossings = joists.length
    ? joists
    : pointsAlong(cavity.supportPointSpacing_m ?? USUAL_SPACING_m.channelLines, place);
  const strip: Box = {
    shape: 'box',
    part: 'channel',
    hatch: 'metal',
    layer,
    x_m: 0,
    y_m: joist,
    width_m,
    height_m: board - joist,
  };
  const up = joists.length ? SCREW_IN_JOIST_m : cavity.depth_m;
  return [
    ...crossings.map((x) => line(place, joists.length ? 'screw' : 'wire', x, joist - up, board - (board - joist) / 2)),
    strip,
    ...boardScrews(place, screwsAlong(place), (board - joist) / 2),
  ];
}

function clips(place: CavityPlace, joists: readonly number[]): readonly Shape[] {
  const { joist, board } = levels(place);
  const { width_m, cavity, layer } = place;
  const furring_m = Math.min(HARDWARE_m.furring, board - joist);
  const at = supportPoints(place, joists, USUAL_SPACING_m.clips);
  const body = (x: number): Box[] => [
    box(layer, 'clip', 'metal', x, HARDWARE_m.clipWidth, joist, board - furring_m / 2),
    box(layer, 'clip', 'rubber', x, HARDWARE_m.rubberWidth, joist, board - furring_m),
  ];
  return [
    ...(joists.length ? [] : at.map((x) => line(place, 'wire', x, joist - cavity.depth_m, joist))),
    {
      shape: 'box',
      part: 'furring',
      hatch: 'metal',
      layer,
      x_m: 0,
      y_m: board - furring_m,
      width_m,
      height_m: furring_m,
    },
    ...at.flatMap(body),
    ...boardScrews(place, screwsAlong(place), furring_m / 2),
  ];
}

function hangers(place: CavityPlace, joists: readonly number[]): readonly Shape[] {
  const { joist, board } = levels(place);
  const { width_m, cavity, layer } = place;
  const furring_m = Math.min(HARDWARE_m.furring, (board - joist) / 2);
  const from = joists.length ? joist : joist - cavity.depth_m;
  const to = board - furring_m;
  const spring_m = Math.min(HARDWARE_m.springHeight, (to - from) / 2);
  const middle = (from + to) / 2;
  const at = supportPoints(place, joists, USUAL_SPACING_m.hangers);
  return [
    { shape: 'box', part: 'furring', hatch: 'metal', layer, x_m: 0, y_m: to, width_m, height_m: furring_m },
    ...at.flatMap((x): Shape[] => [
      line(place, 'hanger-rod', x, from, middle - spring_m / 2),
      box(layer, 'hanger-spring', 'open', x, HARDWARE_m.springWidth, middle - spring_m / 2, middle + spring_m / 2),
      line(place, 'hanger-rod', x, middle + spring_m / 2, to),
    ]),
    ...boardScrews(place, screwsAlong(place), furring_m / 2),
  ];
}

/** Joists that touch nothing above: in the middle of the bays, as high as half the cavity. Their size is a sign only. */
function ceilingJoists(place: CavityPlace): readonly Shape[] {
  const { cavity, width_m, layer } = place;
  const { board } = levels(place);
  const height_m = Math.min(HARDWARE_m.ceilingJoistHighest, cavityDepth_m(cavity) / 2);
  const middles: number[] = [];
  for (let x = width_m / 2; x < width_m; x += cavity.joistSpacing_m) middles.push(x);
  for (let x = width_m / 2 - cavity.joistSpacing_m; x > 0; x -= cavity.joistSpacing_m) middles.unshift(x);
  return [
    ...middles.map((x) => box(layer, 'ceiling-joist', 'timber', x, cavity.joistWidth_m, board - height_m, board)),
    ...boardScrews(place, middles, SCREW_IN_JOIST_m),
  ];
}

/** Clips and hangers sit on joists, as near to their spacing as the joists allow; without joists at the spacing itself. */
function supportPoints(place: CavityPlace, joists: readonly number[], usual_m: number): readonly number[] {
  const spacing_m = place.cavity.supportPointSpacing_m ?? usual_m;
  if (joists.length === 0) return pointsAlong(spacing_m, place);
  const every = Math.max(1, Math.round(spacing_m / place.cavity.joistSpacing_m));
  return joists.filter((_, i) => i % every === 0);
}

/** From the middle of the picture outwards. */
function pointsAlong(spacing_m: number, { width_m }: CavityPlace): number[] {
  const perSide = Math.floor(width_m / 2 / spacing_m);
  return Array.from({ length: 2 * perSide + 1 }, (_, k) => width_m / 2 + (k - perSide) * spacing_m);
}

function screwsAlong(place: CavityPlace): number[] {
  return pointsAlong(USUAL_SPACING_m.screws, place);
}

/** Through every sheet of the lower leaf, into what it hangs on. A slab below a cavity is not screwed. */
function boardScrews(place: CavityPlace, at: readonly number[], bite_m: number): readonly Line[] {
  const { board } = levels(place);
  const { sheets } = place.below;
  if (sheets.some((s) => s.form !== 'board')) return [];
  const thickness_m = sheets.reduce((sum, s) => sum + s.thickness_m, 0);
  return at.map((x) => line(place, 'screw', x, board - bite_m, board + thickness_m));
}

function line({ layer }: CavityPlace, part: Line['part'], x: number, from: number, to: number): Line {
  return {
    shape: 'line',
    part,
    layer,
    points_m: [
      [x, from],
      [x, to],
    ],
  };
}

function box(
  layer: number,
  part: Box['part'],
  hatch: Box['hatch'],
  middle: number,
  width_m: number,
  from: number,
  to: number,
): Box {
  return {
    shape: 'box',
    part,
    hatch,
    layer,
    x_m: middle - width_m / 2,
    y_m: from,
    width_m,
    height_m: Math.max(0, to - from),
  };
}
