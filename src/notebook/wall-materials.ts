import { HOMOGENEOUS_MATERIALS } from '#src/acoustics/standards/iso-12354-1-materials.ts';
import type { WallMaterial } from './types.ts';

interface WallMaterialInfo {
  readonly label: string;
  readonly properties: (typeof HOMOGENEOUS_MATERIALS)[keyof typeof HOMOGENEOUS_MATERIALS];
}

/** The homogeneous materials of EN 12354-1:2000, Annex B, under the keys that files use. */
export const WALL_MATERIALS: Readonly<Record<WallMaterial, WallMaterialInfo>> = {
  concrete: { label: 'concrete', properties: HOMOGENEOUS_MATERIALS.concrete },
  'calcium-silicate': {
    label: 'calcium-silicate blocks',
    properties: HOMOGENEOUS_MATERIALS['calcium-silicate blocks'],
  },
  'lightweight-concrete': {
    label: 'lightweight concrete',
    properties: HOMOGENEOUS_MATERIALS['lightweight concrete'],
  },
  'aerated-concrete': {
    label: 'aerated concrete',
    properties: HOMOGENEOUS_MATERIALS['autoclaved aerated concrete'],
  },
};
