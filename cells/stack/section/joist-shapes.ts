import type { Cavity } from '#src/acoustics/construction.ts';
import type { Box, Line, Shape } from './section.ts';

/** Depth of the flanges of I-joists and of the chords of trusses, m, as the engine weighs them. */
const FLANGE_m = 0.038;
const WEB_m = 0.01;
/** Lip of a cold-formed steel section, m. Common practice, no source. */
const LIP_m = 0.015;

/** Middles of the joists along the section: at their spacing, with the middle of a bay in the middle of the picture. */
export function joistMiddles_m(spacing_m: number, width_m: number): number[] {
  const perSide = Math.ceil(width_m / 2 / spacing_m);
  return Array.from({ length: 2 * perSide }, (_, k) => width_m / 2 + (k - perSide + 0.5) * spacing_m).filter(
    (x) => x > 0 && x < width_m,
  );
}

/** One joist seen end-on, its upper face at `top_m`. */
export function joistShapes(cavity: Cavity, x_m: number, top_m: number, layer: number): readonly Shape[] {
  const { joists, depth_m, joistWidth_m } = cavity;
  const left = x_m - joistWidth_m / 2;
  const flange = Math.min(FLANGE_m, depth_m / 2);
  const box = (part: Box['part'], hatch: Box['hatch'], at: Pick<Box, 'x_m' | 'y_m' | 'width_m' | 'height_m'>): Box => ({
    shape: 'box',
    part,
    hatch,
    layer,
    ...at,
  });
  const flanges = [top_m, top_m + depth_m - flange].map((y_m) =>
    box('joist-flange', 'timber', { x_m: left, y_m, width_m: joistWidth_m, height_m: flange }),
  );
  const web = (width: number, hatch: Box['hatch']) =>
    box('joist-web', hatch, {
      x_m: x_m - width / 2,
      y_m: top_m + flange,
      width_m: width,
      height_m: Math.max(0, depth_m - 2 * flange),
    });
  switch (joists) {
    case 'none':
      return [];
    case 'solid-timber':
      return [box('joist', 'timber', { x_m: left, y_m: top_m, width_m: joistWidth_m, height_m: depth_m })];
    case 'i-joist':
      return [web(Math.min(WEB_m, joistWidth_m), 'panel'), ...flanges];
    case 'open-truss':
      return [web(joistWidth_m / 3, 'open'), ...flanges];
    case 'cold-formed-steel':
      return [steelChannel(left, top_m, cavity, layer)];
  }
}

/** A C of thin sheet, open to the right. */
function steelChannel(left: number, top: number, { joistWidth_m, depth_m }: Cavity, layer: number): Line {
  const right = left + joistWidth_m;
  const bottom = top + depth_m;
  const lip = Math.min(LIP_m, depth_m / 3);
  return {
    shape: 'line',
    part: 'joist',
    layer,
    points_m: [
      [right, top + lip],
      [right, top],
      [left, top],
      [left, bottom],
      [right, bottom],
      [right, bottom - lip],
    ],
  };
}
