import type { Construction, FibreLayer, Sheet } from './construction.ts';
import type { NumberPath } from './number-path.ts';

/** What of a construction a number belongs to. */
export interface NumberOwner {
  /** Counted from 0, from the upper room down; undefined for a number of the covering or of the whole floor. */
  readonly layer: number | undefined;
  /** Name of the sheet, fibre or covering; undefined for a number of a whole layer. */
  readonly part: string | undefined;
}

/** `layers/0/sheets/1/thickness_m` is of a sheet, `layers/1/fill/0/…` of a fibre, `layers/1/depth_m` of a layer. */
export function numberOwner({ layers, covering }: Construction, path: NumberPath): NumberOwner {
  const [whole, at, list, item] = path.split('/');
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

/** Counted from the lower leaf up where several fibres are called the same. */
function fibreName(fill: readonly FibreLayer[], index: number): string | undefined {
  const name = fill[index]?.name;
  return fill.filter((f) => f.name === name && f.thickness_m > 0).length > 1
    ? `${name} (${index + 1} from below)`
    : name;
}
