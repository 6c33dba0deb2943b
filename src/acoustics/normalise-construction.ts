import type { Cavity, Construction, ConstructionLayer, FibreLayer, Interlayer, Leaf, Mat } from './construction.ts';

/** Leaves with something in them, and between each two the interlayer: one fewer than leaves. */
export interface NormalConstruction {
  readonly leaves: readonly Leaf[];
  readonly interlayers: readonly Interlayer[];
}

/**
 * Takes away what has thickness 0, so that a slider may run down to nothing.
 *
 * - A sheet, mat or fill of thickness 0 is absent; leaves left touching become one leaf of loose sheets.
 * - A leaf without sheets is absent. At the top or bottom its interlayer goes with it. Between two cavities it leaves one
 *   cavity of the joint depth, with the upper one's joists and the lower one's support; between two mats one mat, springs one
 *   after the other; between a mat and a cavity the mat goes.
 * - A cavity with no height at all lets its leaves touch.
 *
 * @throws RangeError if no leaf is left.
 */
export function normaliseConstruction(construction: Construction): NormalConstruction {
  const leaves: Leaf[] = [];
  const interlayers: Interlayer[] = [];
  let between: Interlayer | undefined;
  for (const layer of construction.layers.map(withoutZeros)) {
    if (layer.kind !== 'leaf') between = between === undefined ? layer : merged(between, layer);
    else if (layer.sheets.length > 0) {
      const last = leaves.at(-1);
      if (!last) leaves.push(layer);
      else if (between && isPresent(between)) {
        interlayers.push(between);
        leaves.push(layer);
      } else leaves[leaves.length - 1] = touching(last, layer);
      between = undefined;
    }
  }
  if (leaves.length === 0) throw new RangeError('layers must hold a sheet thicker than 0, got none (floor)');
  return { leaves, interlayers };
}

/** Height of the cavity with its support's, m. */
export function cavityDepth_m(cavity: Cavity): number {
  return cavity.depth_m + (cavity.supportHeight_m ?? USUAL_SUPPORT_HEIGHT_m[cavity.support]);
}

/**
 * Common practice, no source, but for the channel: 12.7 mm (½ in) as in the laboratory descriptions of
 * `tests/published/measured-ratings.csv`. A clip holds a 22 mm furring channel about 41 mm below the joist.
 */
const USUAL_SUPPORT_HEIGHT_m: Record<Cavity['support'], number> = {
  direct: 0,
  'resilient-channel': 0.0127,
  clips: 0.041,
  hangers: 0.1,
  'separate-joists': 0.025,
};

function withoutZeros(layer: ConstructionLayer): ConstructionLayer {
  if (layer.kind === 'leaf') return { ...layer, sheets: layer.sheets.filter((s) => s.thickness_m > 0) };
  if (layer.kind === 'cavity') return { ...layer, fill: layer.fill.filter((f) => f.thickness_m > 0) };
  return layer;
}

function isPresent(layer: Interlayer): boolean {
  return layer.kind === 'mat' ? layer.thickness_m > 0 : cavityDepth_m(layer) > 0;
}

function merged(upper: Interlayer, lower: Interlayer): Interlayer {
  if (!isPresent(upper)) return lower;
  if (!isPresent(lower)) return upper;
  if (upper.kind === 'mat') return lower.kind === 'mat' ? inSeries(upper, lower) : lower;
  if (lower.kind === 'mat') return upper;
  const framed = upper.joists === 'none' ? lower : upper;
  const fill: FibreLayer[] = [...lower.fill, ...upper.fill];
  return {
    ...lower,
    joists: framed.joists,
    joistWidth_m: framed.joistWidth_m,
    joistSpacing_m: framed.joistSpacing_m,
    depth_m: upper.depth_m + lower.depth_m,
    fill,
  };
}

/** Compliances 1/(s'(1+jη)) add. */
function inSeries(upper: Mat, lower: Mat): Mat {
  let re = 0;
  let im = 0;
  for (const { dynamicStiffness_N_m3: stiffness, lossFactor } of [upper, lower]) {
    const share = 1 / (stiffness * (1 + lossFactor * lossFactor));
    re += share;
    im += share * lossFactor;
  }
  return {
    kind: 'mat',
    name: `${upper.name} + ${lower.name}`,
    thickness_m: upper.thickness_m + lower.thickness_m,
    dynamicStiffness_N_m3: re / (re * re + im * im),
    lossFactor: im / re,
  };
}

function touching(upper: Leaf, lower: Leaf): Leaf {
  return { kind: 'leaf', sheets: [...upper.sheets, ...lower.sheets], contact: 'loose' };
}
