/**
 * What goes where a layer or sheet is removed, beyond what its name tells: said before it goes. It is told from what the
 * floor has before and after, scenario by scenario: a mat that is absent does not go, and joists go with the last leaf
 * above or below them.
 */
import type { Construction, ConstructionLayer } from '#src/acoustics/construction.ts';
import { listed } from '#src/acoustics/listed.ts';
import type { LayerPart } from '#src/notebook/edits/layer-in-scenario.ts';
import { goesWith } from '#src/notebook/edits/remove-layer.ts';
import { findLayerIndex, findScenario } from '#src/notebook/find.ts';
import { presentLayers } from '#src/notebook/layer-presence.ts';
import { resolveStack } from '#src/notebook/resolve.ts';
import type { Layer, Notebook, Stack } from '#src/notebook/types.ts';
import { fieldValue, valuesOf } from '#src/notebook/values.ts';
import type { Reach } from './reach.ts';

/** Of the active scenario first, then of the others that lose something else. Empty where the name tells it all. */
export function whatGoes(notebook: Notebook, stack: Stack, part: LayerPart, reach: Reach): readonly string[] {
  const { active, scenarios } = notebook;
  const sentenceIn = (id: string) => sentence(stack, resolveStack(notebook, id, stack.id), part);
  const here = sentenceIn(active);
  const elsewhere = new Map<string, string[]>();
  for (const { id } of reach === 'every' ? scenarios.filter((s) => s.id !== active) : []) {
    const said = sentenceIn(id);
    if (said && said !== here) elsewhere.set(said, [...(elsewhere.get(said) ?? []), id]);
  }
  return joistsOnce([
    ...(here ? [here] : []),
    ...[...elsewhere].map(([said, ids]) => `In ${quoted(ids.map((id) => findScenario(notebook, id).name))}: ${said}`),
  ]);
}

/** What becomes of joists is said with the one loss that takes them, or once behind several. */
function joistsOnce(sentences: readonly string[]): readonly string[] {
  const taking = sentences.filter((said) => said.endsWith(WITHOUT_JOISTS));
  if (taking.length < 2) return sentences;
  const short = sentences.map((said) => (taking.includes(said) ? said.slice(0, -WITHOUT_JOISTS.length) : said));
  return [
    ...short,
    'Joists are reckoned only between two leaves: a floor that keeps one leaf is computed without any.',
  ];
}

export function hasJoists(notebook: Notebook, layer: Layer): boolean {
  return layer.kind === 'cavity' && fieldValue(layer.joists, valuesOf(notebook, notebook.active)) !== 'none';
}

function sentence(stack: Stack, { layers }: Construction, part: LayerPart): string | undefined {
  const removed = findLayerIndex(stack, part.layer);
  const isThere = presentLayers({ layers });
  const stays = staying(stack, layers, removed, part.sheet);
  const also = indices(layers).filter(
    (i) => isThere[i] && !stays.has(i) && (i !== removed || part.sheet !== undefined),
  );
  const joistsStay = indices(layers).some((i) => stays.has(i) && isFramed(layers[i]!));
  if (also.length > 0) {
    const goes = also.length === 1 ? 'goes' : 'go';
    const cavity = also.map((i) => layers[i]!).find((layer) => layer.kind === 'cavity');
    return `${quoted(also.map((i) => stack.layers[i]!.name))} ${goes} with it${inside(cavity, joistsStay)}`;
  }
  if (layers[removed]!.kind === 'leaf' || !isThere[removed]) return undefined;
  return joined(stack, layers, removed, stays);
}

/** Which layers are there when a part, with what belongs to it, is not. */
function staying(
  { layers: named }: Stack,
  layers: readonly ConstructionLayer[],
  removed: number,
  sheet: number | undefined,
): ReadonlySet<number> {
  const companion = sheet === undefined ? goesWith(named, removed) : undefined;
  const kept = indices(layers).filter((i) => named[i] !== companion && (i !== removed || sheet !== undefined));
  const left = kept.map((i) => {
    const layer = layers[i]!;
    return i === removed && layer.kind === 'leaf'
      ? { ...layer, sheets: layer.sheets.filter((_, k) => k !== sheet) }
      : layer;
  });
  const isThere = presentLayers({ layers: left });
  return new Set(kept.filter((_, k) => isThere[k]));
}

/** Leaves lie on each other where nothing else is between them. */
function joined(
  stack: Stack,
  layers: readonly ConstructionLayer[],
  removed: number,
  stays: ReadonlySet<number>,
): string {
  const isLeafThere = (i: number) => layers[i]!.kind === 'leaf' && stays.has(i);
  const above = indices(layers).findLast((i) => i < removed && isLeafThere(i))!;
  const below = indices(layers).find((i) => i > removed && isLeafThere(i))!;
  const isBetween = indices(layers).some((i) => i > above && i < below && stays.has(i));
  const names = quoted([above, below].map((i) => stack.layers[i]!.name));
  const meet = isBetween ? `${names} stay apart` : `${names} then lie on each other`;
  return `${meet}${isFramed(layers[removed]!) ? ', and the joists are gone' : ''}.`;
}

const WITHOUT_JOISTS = ' Joists are reckoned only between two leaves, so that the floor is computed without any.';

/** The end of the sentence. */
function inside(cavity: ConstructionLayer | undefined, joistsStay: boolean): string {
  if (!cavity) return '.';
  if (!isFramed(cavity)) return ': the cavity with its fill and the support of the ceiling.';
  return `: the joists, the fill between them and the support of the ceiling.${joistsStay ? '' : WITHOUT_JOISTS}`;
}

function isFramed(layer: ConstructionLayer): boolean {
  return layer.kind === 'cavity' && layer.joists !== 'none';
}

const indices = (layers: readonly unknown[]): readonly number[] => [...layers.keys()];

/** “deck”, “mat” and “ceiling”. */
function quoted(names: readonly string[]): string {
  return listed(names.map((name) => `“${name}”`));
}
