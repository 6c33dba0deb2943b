/** How a field of a stack asks for a material of the notebook's own. */
import type { FieldPath } from '#src/notebook/field-path.ts';
import type { OwnMaterial } from '#src/notebook/types.ts';

/** The choice that makes a material instead of taking one; no key of a material, since keys begin with a letter. */
export const OWN_MATERIAL = '+';

/** Of what kind a material of one's own would be in this field; undefined where none fits. */
export function ownKind(path: FieldPath): OwnMaterial['kind'] | undefined {
  const name = path.at(-1);
  if (name === 'material') return 'sheet';
  if (name === 'covering') return 'covering';
  return name === 'fill' ? 'fibre' : undefined;
}

/** A material was made for a field, and waits for its numbers. */
export class OwnMaterialMade extends Event {
  static readonly type = 'own-material-made';
  readonly material: OwnMaterial;

  constructor(material: OwnMaterial) {
    super(OwnMaterialMade.type, { bubbles: true, composed: true });
    this.material = material;
  }
}

declare global {
  interface HTMLElementEventMap {
    'own-material-made': OwnMaterialMade;
  }
}
