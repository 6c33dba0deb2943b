/** Said where a mass per area stands as a number. */
export const MASS_IS_LOAD = 'mass is load, which a structural engineer must check';
