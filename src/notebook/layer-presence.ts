/** Which layers of a floor are there: what has a thickness of 0 is absent, as the engine takes it. */
import type { Construction } from '#src/acoustics/construction.ts';
import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';
import type { FieldPath } from './field-path.ts';
import { fillPath } from './fill-places.ts';
import { resolveStack } from './resolve.ts';
import type { Layer, Notebook, ParameterValue } from './types.ts';

/** One per layer. A mat or cavity needs a height of its own, and a leaf that is there somewhere above and below it. */
export function presentLayers({ layers }: Pick<Construction, 'layers'>): readonly boolean[] {
  const isLeafThere = layers.map((layer) => layer.kind === 'leaf' && layer.sheets.some((s) => s.thickness_m > 0));
  return layers.map((layer, i) => {
    if (layer.kind === 'leaf') return isLeafThere[i]!;
    const height_m = layer.kind === 'mat' ? layer.thickness_m : cavityDepth_m(layer);
    return height_m > 0 && isLeafThere.slice(0, i).includes(true) && isLeafThere.slice(i + 1).includes(true);
  });
}

/** Of every scenario by its id, which layers of a stack are there. */
export function presenceByScenario(notebook: Notebook, stackId: string): ReadonlyMap<string, readonly boolean[]> {
  return new Map(notebook.scenarios.map(({ id }) => [id, presentLayers(resolveStack(notebook, id, stackId))]));
}

export interface AbsentField {
  readonly path: FieldPath;
  readonly value: ParameterValue;
}

/**
 * What a layer's fields hold where it is absent, whatever stands beside it: no thickness, and for a cavity no support
 * that has a height of its own.
 */
export function absentFields(layer: Layer, index: number): readonly AbsentField[] {
  const at = (...path: FieldPath) => ['layers', index, ...path];
  switch (layer.kind) {
    case 'leaf':
      return layer.sheets.map((_, k) => absentSheetField(index, k));
    case 'mat':
      return [{ path: at('thickness_m'), value: 0 }];
    case 'cavity':
      return [
        { path: at('depth_m'), value: 0 },
        { path: at('support'), value: 'direct' },
        ...(layer.supportHeight_m === undefined ? [] : [{ path: at('supportHeight_m'), value: 0 }]),
      ];
  }
}

export function absentFillField(index: number, place: number): AbsentField {
  return { path: fillPath(index, place, 'fillThickness_m'), value: 0 };
}

export function absentSheetField(index: number, sheet: number): AbsentField {
  return { path: ['layers', index, 'sheets', sheet, 'thickness_m'], value: 0 };
}
