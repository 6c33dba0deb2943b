import type { Cavity, Construction, Leaf, Mat, Sheet } from '#src/acoustics/construction.ts';
import { cavityDepth_m, normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { cavityDimensions, cavityShapes } from './cavity-shapes.ts';
import type { Box, Dimension, Hatch, Origin, Section, Shape } from './section.ts';

export interface SectionOptions {
  readonly width_m: number;
  /** What fills a sheet; the construction itself does not say what its sheets are made of. */
  readonly hatchOf: (sheet: Sheet, origin: Origin) => Hatch;
}

/**
 * The cross-section of a construction, to scale. Layers of thickness 0 are absent, and what they leave touching touches:
 * the same rules as in the engine.
 *
 * @throws RangeError if no leaf is left.
 */
export function sectionOf(construction: Construction, { width_m, hatchOf }: SectionOptions): Section {
  const { leaves, interlayers } = normaliseConstruction(construction);
  const origins = originsOf(construction);
  const shapes: Shape[] = [];
  const dimensions: Dimension[] = [];
  let y_m = 0;
  const stackUp = (
    height_m: number,
    box: Omit<Box, 'shape' | 'x_m' | 'y_m' | 'width_m' | 'height_m'>,
    of: Dimension['of'],
  ) => {
    const { part: _part, hatch: _hatch, ...origin } = box;
    shapes.push({ shape: 'box', x_m: 0, y_m, width_m, height_m, ...box });
    dimensions.push({ from_m: y_m, to_m: y_m + height_m, of, ...origin });
    y_m += height_m;
  };

  const { covering } = construction;
  if (covering && covering.thickness_m > 0)
    stackUp(covering.thickness_m, { part: 'covering', hatch: 'covering' }, 'covering');
  leaves.forEach((leaf, i) => {
    for (const sheet of leaf.sheets) {
      const origin = origins.get(sheet)!;
      stackUp(sheet.thickness_m, { part: 'sheet', hatch: hatchOf(sheet, origin), ...origin }, 'sheet');
    }
    const interlayer = interlayers[i];
    const below = leaves[i + 1];
    if (!interlayer || !below) return;
    const origin = { layer: interlayerIndex(construction, origins, leaf, below, interlayer) };
    if (interlayer.kind === 'mat') {
      stackUp(interlayer.thickness_m, { part: 'mat', hatch: 'mat', ...origin }, 'mat');
      return;
    }
    const place = { cavity: interlayer, above: leaf, below, top_m: y_m, width_m, ...origin };
    shapes.push(...cavityShapes(place));
    const cavityLinks = cavityDimensions(place);
    dimensions.push(...cavityLinks);
    y_m = cavityLinks.at(-1)?.to_m ?? y_m;
  });
  // Screws run through what is stacked up after them.
  const screws = shapes.filter((s) => s.part === 'screw');
  return { width_m, height_m: y_m, shapes: [...shapes.filter((s) => s.part !== 'screw'), ...screws], dimensions };
}

/** Sheets pass through normalisation as the same objects, so they tell where they came from. */
function originsOf({ layers }: Construction): ReadonlyMap<Sheet, Required<Origin>> {
  return new Map(
    layers.flatMap((layer, i) =>
      layer.kind === 'leaf' ? layer.sheets.map((s, k) => [s, { layer: i, sheet: k }] as const) : [],
    ),
  );
}

/** Of several interlayers that became one, the first of the kind that is left. */
function interlayerIndex(
  { layers }: Construction,
  origins: ReadonlyMap<Sheet, Required<Origin>>,
  above: Leaf,
  below: Leaf,
  { kind }: Mat | Cavity,
): number {
  const from = origins.get(above.sheets.at(-1)!)!.layer;
  const to = origins.get(below.sheets[0]!)!.layer;
  const index = layers.findIndex((layer, i) => i > from && i < to && layer.kind === kind);
  return index < 0 ? from + 1 : index;
}

const NARROWEST_m = 0.6;
const WIDEST_m = 1.2;

/** A width that shows two joists of every construction side by side, the same for all of them. */
export function sectionWidth_m(constructions: readonly Construction[]): number {
  const spacings = constructions.flatMap(({ layers }) =>
    layers.flatMap((layer) => (layer.kind === 'cavity' && layer.joists !== 'none' ? [layer.joistSpacing_m] : [])),
  );
  return Math.min(WIDEST_m, Math.max(NARROWEST_m, 1.5 * Math.max(0, ...spacings)));
}

/** Overall height, m, without drawing anything; 0 where no leaf is left. */
export function sectionHeight_m(construction: Construction): number {
  const { covering } = construction;
  try {
    const { leaves, interlayers } = normaliseConstruction(construction);
    const sheets = leaves.flatMap((leaf) => leaf.sheets.map((s) => s.thickness_m));
    const between = interlayers.map((i) => (i.kind === 'mat' ? i.thickness_m : cavityDepth_m(i)));
    return [covering?.thickness_m ?? 0, ...sheets, ...between].reduce((sum, height_m) => sum + height_m, 0);
  } catch {
    return 0;
  }
}
