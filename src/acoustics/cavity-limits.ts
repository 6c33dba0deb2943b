/** Depth of a cavity, m. What is higher is a room with modes of its own, not the air between two leaves. */
export const CAVITY_DEPTH_m = [0, 2] as const;
