import { carriedAlong } from './carried-along.ts';
import type { FloorModel } from './floor-model.ts';

/**
 * Writes into `out` what each leaf loses more while the floor is struck: a deck on joists drains its field into them, by what
 * boards hold of its stiffness (`deckImpactLossFactor`). Through a mat the joists drain deck and floating leaf alike as far as
 * both move as one, so that on a rigid mat they lose what they would lying on each other.
 */
export function struckExtraLoss(model: FloorModel, f_Hz: number, out: Float64Array): void {
  const { plates, constants } = model;
  out.fill(0);
  out[0] = plates[0]!.struckExtraLoss;
  if (!floatsOnJoists(model)) return;
  const asOne = carriedAlong(model, f_Hz);
  out[0] = asOne * constants.deckImpactLossFactor * (1 - plates[0]!.castShare);
  out[1] = asOne * plates[1]!.struckExtraLoss;
}

/** Whether any leaf loses more while the floor is struck. */
export function drainsWhenStruck(model: FloorModel): boolean {
  return model.plates[0]!.struckExtraLoss > 0 || floatsOnJoists(model);
}

function floatsOnJoists({ interlayers: [first, second] }: FloorModel): boolean {
  return first?.kind === 'mat' && second?.kind === 'cavity' && second.cavity.joists !== 'none';
}
