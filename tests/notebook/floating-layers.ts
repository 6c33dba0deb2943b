import type { LeafLayer, MatLayer } from '#src/notebook/types.ts';

/** A slab of cellular concrete that floats, and the mat it lies on. */
export const SLAB: LeafLayer = {
  kind: 'leaf',
  id: 'floating',
  name: 'floating slab',
  contact: 'loose',
  sheets: [{ material: 'cellular-concrete', thickness_m: 0.038 }],
};
export const MAT: MatLayer = {
  kind: 'mat',
  id: 'mat',
  name: 'mat',
  thickness_m: 0.01,
  dynamicStiffness_N_m3: 2e7,
  lossFactor: 0.1,
};
