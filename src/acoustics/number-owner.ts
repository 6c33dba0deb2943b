import type { Construction, FibreLayer, Leak, Sheet } from './construction.ts';
import { leakArea_m2 } from './leak-area.ts';
import type { NumberPath } from './number-path.ts';

/** What of a construction a number belongs to. */
export interface NumberOwner {
  /** Counted from 0, from the upper room down; undefined for a number of the covering, a leak or the whole floor. */
  readonly layer: number | undefined;
  /** Name of the sheet, fibre, covering or leak; undefined for a number of a whole layer. */
  readonly part: string | undefined;
}

/**
 * `layers/0/sheets/1/thickness_m` is of a sheet, `layers/1/fill/0/…` of a fibre, `layers/1/depth_m` of a layer,
 * `leaks/0/width_m` of a leak.
 */
export function numberOwner({ layers, covering, leaks = [] }: Construction, path: NumberPath): NumberOwner {
  const [whole, at, list, item] = path.split('/');
  if (whole === 'leaks') return { layer: undefined, part: leakName(leaks, Number(at)) };
  if (whole !== 'layers') return { layer: undefined, part: whole === 'covering' ? covering?.name : undefined };
  const layer = layers[Number(at)];
  const index = Number(item);
  const part =
    layer?.kind === 'leaf' && list === 'sheets'
      ? sheetName(layer.sheets, index)
      : layer?.kind === 'cavity' && list === 'fill'
        ? fibreName(layer.fill, index)
        : undefined;
  return { layer: Number(at), part };
}

/** Counted from the top where several sheets that are there are called the same. */
function sheetName(sheets: readonly Sheet[], index: number): string | undefined {
  const name = sheets[index]?.name;
  return sheets.filter((s) => s.name === name && s.thickness_m > 0).length > 1 ? `${name} (sheet ${index + 1})` : name;
}

/** Counted in their order where several that let sound through are called the same. */
function leakName(leaks: readonly Leak[], index: number): string | undefined {
  const name = leaks[index]?.name;
  return leaks.filter((leak) => leak.name === name && leakArea_m2(leak) > 0).length > 1
    ? `${name} (${index + 1})`
    : name;
}

/** Counted from the lower leaf up where several fibres are called the same. */
function fibreName(fill: readonly FibreLayer[], index: number): string | undefined {
  const name = fill[index]?.name;
  return fill.filter((f) => f.name === name && f.thickness_m > 0).length > 1
    ? `${name} (${index + 1} from below)`
    : name;
}
