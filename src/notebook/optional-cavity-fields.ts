/** Fields of a cavity that may be absent. */
export const OPTIONAL_CAVITY_FIELDS = [
  'supportLineSpacing_m',
  'supportPointSpacing_m',
  'supportHeight_m',
  'supportStiffness_N_m',
  'hangerFrequency_Hz',
] as const;

export type OptionalCavityField = (typeof OPTIONAL_CAVITY_FIELDS)[number];
