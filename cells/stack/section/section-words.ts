/** A construction in one sentence, from the upper room down. */
import type { Cavity, Construction } from '#src/acoustics/construction.ts';
import { isHeldAtEdges } from '#src/acoustics/held-at-edges.ts';
import { normaliseConstruction } from '#src/acoustics/normalise-construction.ts';
import { JOIST_LABELS, SUPPORT_LABELS } from '#src/notebook/field-specs.ts';
import type { UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

export function constructionInWords(construction: Construction, units: UnitSystem): string {
  const length = (value_m: number) => formatQuantity(value_m, 'length', units);
  const { leaves, interlayers } = normaliseConstruction(construction);
  const parts = leaves.flatMap((leaf, i) => {
    const sheets = leaf.sheets.map((s) => `${length(s.thickness_m)} ${s.name}`).join(' on ');
    const between = interlayers[i];
    if (!between) return [sheets];
    if (between.kind === 'mat') return [sheets, `${length(between.thickness_m)} ${between.name}`];
    return [sheets, cavityInWords(between, length)];
  });
  const covering = construction.covering ? [construction.covering.name] : [];
  return [...covering, ...parts].join('; ');
}

function cavityInWords(cavity: Cavity, length: (value_m: number) => string): string {
  const { joists, depth_m, joistSpacing_m, fill, support } = cavity;
  const frame =
    joists === 'none'
      ? `${length(depth_m)} of air`
      : `${length(depth_m)} ${JOIST_LABELS[joists]} every ${length(joistSpacing_m)}`;
  const filled = fill.length
    ? `with ${fill.map((f) => `${length(f.thickness_m)} ${f.name}`).join(' and ')}`
    : 'with nothing in it';
  const held = isHeldAtEdges(cavity) ? 'held at its edges alone' : SUPPORT_LABELS[support];
  return `${frame}, ${filled}, ceiling: ${held}`;
}
