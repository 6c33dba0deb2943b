/** Below what band levels in the room below depend on the place. */
import type { Construction } from '#src/acoustics/construction.ts';
import { diffuseFrom_Hz, type RoomSize } from '#src/acoustics/room-modes.ts';
import type { RegionOverlay } from '#src/charts/band-data.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

/** A room's height where nothing says another: common practice, no source. */
const ASSUMED_HEIGHT_m = 2.5;
/** Heights that the stated volume over the floor's own sides may give; else its plan is taken larger or smaller. Our own choice. */
const LIKELY_HEIGHT_m = { min: 2, max: 8 };

/** None where every band has modes enough. */
export function lowBands(
  notebook: Notebook,
  stackId: string,
  construction: () => Construction,
  bands_Hz: readonly number[],
): readonly RegionOverlay[] {
  const floor = resolved(construction);
  if (!floor) return [];
  const stated_m3 = statedVolume_m3(notebook, stackId);
  const from_Hz = diffuseFrom_Hz(roomBelow(floor, stated_m3), bands_Hz);
  if (from_Hz <= bands_Hz[0]!) return [];
  const volume = formatQuantity(
    stated_m3 ?? floor.length_m * floor.width_m * ASSUMED_HEIGHT_m,
    'volume',
    notebook.units,
  );
  const height = formatQuantity(ASSUMED_HEIGHT_m, 'span', notebook.units);
  const room = `in a room of ${volume}${stated_m3 === undefined ? ` (assumed: as large as the floor, ${height} high; a cell of ratings may state another)` : ''}`;
  const few = Number.isFinite(from_Hz)
    ? `below the ${from_Hz} Hz band fewer than five modes a band`
    : 'fewer than five modes in every band';
  return [
    {
      kind: 'region',
      description: `${few} ${room}: the level depends on the place`,
      below_Hz: from_Hz,
    },
  ];
}

/** What cannot be resolved is told with the failure of its prediction. */
function resolved(construction: () => Construction): Construction | undefined {
  try {
    return construction();
  } catch {
    return undefined;
  }
}

/** By the first cell of ratings that says it for this floor. */
function statedVolume_m3({ cells }: Notebook, stackId: string): number | undefined {
  for (const cell of cells)
    if (cell.kind === 'ratings' && cell.stack === stackId && cell.receivingVolume_m3) return cell.receivingVolume_m3;
  return undefined;
}

/** With the floor's sides, or in their proportion where the volume would make them a shaft or a slit. */
export function roomBelow({ length_m, width_m }: Construction, volume_m3: number | undefined): RoomSize {
  const area_m2 = length_m * width_m;
  const height_m = volume_m3 === undefined ? ASSUMED_HEIGHT_m : volume_m3 / area_m2;
  if (height_m >= LIKELY_HEIGHT_m.min && height_m <= LIKELY_HEIGHT_m.max) return { length_m, width_m, height_m };
  const scale = Math.sqrt(volume_m3! / ASSUMED_HEIGHT_m / area_m2);
  return { length_m: length_m * scale, width_m: width_m * scale, height_m: ASSUMED_HEIGHT_m };
}
