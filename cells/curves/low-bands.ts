/** Below what band levels in the room below depend on the place. */
import type { Construction } from '#src/acoustics/construction.ts';
import { ASSUMED_ROOM_HEIGHT_m, roomSizeBelow } from '#src/acoustics/room-below.ts';
import { diffuseFrom_Hz } from '#src/acoustics/room-modes.ts';
import type { RegionOverlay } from '#src/charts/band-data.ts';
import type { Notebook } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';

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
  const from_Hz = diffuseFrom_Hz(roomSizeBelow(floor, stated_m3), bands_Hz);
  if (from_Hz <= bands_Hz[0]!) return [];
  const volume = formatQuantity(
    stated_m3 ?? floor.length_m * floor.width_m * ASSUMED_ROOM_HEIGHT_m,
    'volume',
    notebook.units,
  );
  const height = formatQuantity(ASSUMED_ROOM_HEIGHT_m, 'span', notebook.units);
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
