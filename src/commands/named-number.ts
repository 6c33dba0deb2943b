import type { Construction } from '#src/acoustics/construction.ts';
import { numberOwner } from '#src/acoustics/number-owner.ts';
import { isNumberAt, type NumberPath } from '#src/acoustics/number-path.ts';
import type { StudiedNumber } from '#src/acoustics/number-study.ts';

/** A number of a construction that can be varied. */
export interface NamedNumber {
  /** Where it stands: `layers/0/sheets/1/thickness_m`, layers and sheets counted from 0, from the upper room down. */
  readonly path: NumberPath;
  /** What it belongs to: name of the sheet, fibre, covering or layer. */
  readonly of: string;
  readonly value: number;
  /** False for what the engine takes because the construction states nothing. */
  readonly stated: boolean;
}

/** @param layerNames One for each layer. */
export function namedNumber(
  construction: Construction,
  layerNames: readonly string[],
  { path, value }: StudiedNumber,
): NamedNumber {
  const { part, layer } = numberOwner(construction, path);
  const of = part ?? (layer === undefined ? 'floor' : (layerNames[layer] ?? `layer ${layer + 1}`));
  return { path, of, value, stated: isNumberAt(construction, path) };
}
