/**
 * What is built in loses at least this at its edges and joints, however little its material does: own lower limit, below all
 * losses in the list of materials.
 */
export const LEAST_LOSS_FACTOR = 0.001;
