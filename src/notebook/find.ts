/** Looking things up in a notebook by id or key; what is missing is a RangeError that names it. */
import type { Cell, Layer, Notebook, Parameter, Scenario, Stack } from './types.ts';

export function findScenario(notebook: Notebook, scenarioId: string): Scenario {
  return found(
    notebook.scenarios.find((s) => s.id === scenarioId),
    'scenario',
    scenarioId,
  );
}

export function findStack(notebook: Notebook, stackId: string): Stack {
  return found(
    notebook.stacks.find((s) => s.id === stackId),
    'stack',
    stackId,
  );
}

export function findParameter(notebook: Notebook, key: string): Parameter {
  return found(
    notebook.parameters.find((p) => p.key === key),
    'parameter',
    key,
  );
}

export function findCell(notebook: Notebook, cellId: string): Cell {
  return found(
    notebook.cells.find((c) => c.id === cellId),
    'cell',
    cellId,
  );
}

export function findLayerIndex(stack: Stack, layerId: string): number {
  const index = stack.layers.findIndex((l) => l.id === layerId);
  if (index < 0) throw missing('layer', layerId);
  return index;
}

export function findLayer(stack: Stack, layerId: string): Layer {
  return stack.layers[findLayerIndex(stack, layerId)]!;
}

/** @throws RangeError for a layer of another kind too. */
export function findLayerOf<K extends Layer['kind']>(
  stack: Stack,
  layerId: string,
  kind: K,
): Extract<Layer, { kind: K }> {
  const layer = findLayer(stack, layerId);
  if (layer.kind === kind) return layer as Extract<Layer, { kind: K }>;
  throw new RangeError(`layer must be a ${kind}, got a ${layer.kind} (layer "${layerId}")`);
}

/** The scenario without a parent: its values are the parameters' own. */
export function baseScenario(notebook: Notebook): Scenario {
  return found(
    notebook.scenarios.find((s) => s.parent === null),
    'scenario',
    'without a parent',
  );
}

export function isBase(notebook: Notebook, scenarioId: string): boolean {
  return findScenario(notebook, scenarioId).parent === null;
}

/** From the scenario itself up to the base. */
export function lineage(notebook: Notebook, scenarioId: string): readonly Scenario[] {
  const chain = [findScenario(notebook, scenarioId)];
  for (let parent = chain[0]!.parent; parent !== null; parent = chain.at(-1)!.parent) {
    if (chain.some((s) => s.id === parent))
      throw new RangeError(`scenario parents must not form a circle, got one through "${parent}"`);
    chain.push(findScenario(notebook, parent));
  }
  return chain;
}

function found<T>(thing: T | undefined, what: string, id: string): T {
  if (thing === undefined) throw missing(what, id);
  return thing;
}

function missing(what: string, id: string): RangeError {
  return new RangeError(`${what} must be one of the notebook's, got "${id}"`);
}
