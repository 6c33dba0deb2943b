/** What goes around the floor, in full sentences: one per limit or wall. */
import { NAMED_FLANKING } from '#src/notebook/flanking-limits.ts';
import type { FlankingWall, Notebook, UnitSystem } from '#src/notebook/types.ts';
import { JUNCTION_LABELS, WALL_FIELDS, type WallField } from '#src/notebook/wall-fields.ts';
import { WALL_MATERIALS } from '#src/notebook/wall-materials.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { wallInWords } from '../stack/surroundings/wall-words.ts';

export function aroundRecord({ flanking, units }: Notebook): readonly string[] {
  const { kind, walls = [] } = flanking;
  if (kind === 'none') return ['Nothing goes around the floor, as in a laboratory.'];
  if (kind === 'by the walls')
    return walls.length === 0 ? ['No wall is described.'] : walls.map((wall) => wallSentence(wall, units));
  const { R500_dB, slope_dB_per_octave } = kind === 'own' ? flanking : NAMED_FLANKING[kind];
  const whose = kind === 'own' ? 'A limit of the notebook’s own' : `A limit for ${kind} walls, assumed, not measured`;
  const level = (value_dB: number) => formatQuantity(value_dB, 'level', units);
  return [
    `${whose}: ${level(R500_dB)} at 500 Hz and ${level(slope_dB_per_octave)} more per octave, for airborne sound only.`,
  ];
}

function wallSentence(wall: FlankingWall, units: UnitSystem): string {
  const { name, junction, straightK_dB, cornerK_dB, junctionLength_m, height_m } = wall;
  const text = (field: WallField, value: number) => {
    const { label, quantity } = WALL_FIELDS[field];
    return `${label} ${formatQuantity(value, quantity, units)}`;
  };
  const made =
    wall.kind === 'homogeneous'
      ? `${WALL_MATERIALS[wall.material].label}, ${text('thickness_m', wall.thickness_m)} (${wallInWords(wall, units)})`
      : wallInWords(wall, units);
  const K = junction === 'measured' ? `: ${text('straightK_dB', straightK_dB)}, ${text('cornerK_dB', cornerK_dB)}` : '';
  const size = `${text('junctionLength_m', junctionLength_m)}, ${text('height_m', height_m)}`;
  return `${name}: ${made}; ${size}; junction ${JUNCTION_LABELS[junction]}${K}.`;
}
