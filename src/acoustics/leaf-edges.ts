import type { Interlayer } from './construction.ts';
import type { PlateEdges } from './resonant-radiation.ts';

/**
 * The edges of a leaf between the interlayers `above` and `below`: the floor's own, and both sides of every joist that
 * holds it fast. Between rigid lines a board radiates like a row of narrow plates, so that U/S grows by 2/b. Steel
 * flanges, channels and clips give way and break up no bending wave. Own addition to the radiation efficiency of EN
 * 12354-1 Annex B; it lowered the errors of framed walls and floors more than any other (see METHOD.md).
 */
export function leafEdges(floor: PlateEdges, above: Interlayer | undefined, below: Interlayer | undefined): PlateEdges {
  let linesPerMetre = 0;
  if (below?.kind === 'cavity' && isRigid(below.joists)) linesPerMetre += 1 / below.joistSpacing_m;
  if (above?.kind === 'cavity' && isRigid(above.joists) && above.support === 'direct') {
    linesPerMetre += 1 / above.joistSpacing_m;
  }
  return { ...floor, perimeter_m: floor.perimeter_m + 2 * floor.area_m2 * linesPerMetre };
}

function isRigid(joists: string): boolean {
  return joists !== 'none' && joists !== 'cold-formed-steel';
}
