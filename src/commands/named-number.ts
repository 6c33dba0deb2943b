import type { Construction } from '#src/acoustics/construction.ts';
import { type NumberPath, numberAt } from '#src/acoustics/number-path.ts';
import { everyNumber } from '#src/acoustics/sensitivities.ts';
import { withUsualNumbers } from './usual-numbers.ts';

/** A number of a construction that can be varied. */
export interface NamedNumber {
  /** Where it stands: `layers/0/sheets/1/thickness_m`, layers and sheets counted from 0, from the upper room down. */
  readonly path: NumberPath;
  /** What it belongs to: name of the sheet, fibre or layer. */
  readonly of: string;
  readonly value: number;
  /** False for what the engine takes because the construction states nothing. */
  readonly stated: boolean;
}

export interface NumberedConstruction {
  /** With every number written out; it predicts the same. */
  readonly construction: Construction;
  readonly numbers: readonly NamedNumber[];
}

/**
 * Every positive number of the layers, those included that the engine takes for want of a statement.
 *
 * @param layerNames One for each layer.
 */
export function numbered(given: Construction, layerNames: readonly string[]): NumberedConstruction {
  const construction = withUsualNumbers(given);
  const stated = new Set(everyNumber(given));
  const numbers = everyNumber(construction).map((path): NamedNumber => {
    const value = numberAt(construction, path);
    return { path, of: ownerOf(construction, path, layerNames), value, stated: stated.has(path) };
  });
  return { construction, numbers };
}

/** `layers/0/sheets/1/thickness_m` is of a sheet or fibre, `layers/1/depth_m` of a layer. */
function ownerOf({ layers }: Construction, path: NumberPath, layerNames: readonly string[]): string {
  const [, layer = '', list = '', item = ''] = path.split('/');
  const index = Number(layer);
  const within = layers[index];
  const part = within?.kind === 'leaf' ? within.sheets[Number(item)] : undefined;
  const fibre = within?.kind === 'cavity' && list === 'fill' ? within.fill[Number(item)] : undefined;
  return part?.name ?? fibre?.name ?? layerNames[index] ?? `layer ${index + 1}`;
}
