/** A covering that a notebook or a stack may bring. Invented. */
export const CLUB_RUBBER = {
  kind: 'covering',
  key: 'rubber',
  name: 'club rubber',
  source: 'invented',
  surfaceMass_kg_m2: 7,
  thickness_m: 0.005,
  contactStiffness_N_m: 1e6,
};
