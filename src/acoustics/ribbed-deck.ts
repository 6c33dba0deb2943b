import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';
import { joistBending_Nm2, joistMass_kg_m } from './supports.ts';

/**
 * How much joists hold back the reverberant field of the struck leaf: mean square velocity with them per that of the
 * leaf alone, 0–1.
 *
 * Bending waves longer than two bays (k_B b < π) bend the joists along, as ribs of an orthotropic plate: with B_x = B + EI/b
 * and m'' = m' + m_j/b the mobility falls to 1/(8 √(m'' √(B_x B))), and v² = F² Re Y/(ωηm''). Shorter waves find the bays.
 */
export function ribFactor(model: FloorModel, states: readonly PlateState[], f_Hz: number): number {
  const { plates, interlayers } = model;
  const omega = 2 * Math.PI * f_Hz;
  let bending = states[0]!.bending_Nm;
  let mass = plates[0]!.surfaceMass_kg_m2;
  const own = mass * mass * mass * bending;
  let share = 1;
  let below = interlayers[0];
  if (below?.kind === 'mat') {
    // A floating slab moves with its deck below the resonance on the mat.
    const deck = plates[1]!.surfaceMass_kg_m2;
    const resonance2 = below.mat.dynamicStiffness_N_m3 * (1 / mass + 1 / deck);
    share = 1 / (1 + ((omega * omega) / resonance2) ** 2);
    bending += states[1]!.bending_Nm;
    mass += deck;
    below = interlayers[1];
  }
  if (below?.kind !== 'cavity' || below.cavity.joists === 'none') return 1;
  const b = below.cavity.joistSpacing_m;
  const ribbed = bending + joistBending_Nm2(below.cavity) / b;
  const ribbedMass = mass + joistMass_kg_m(below.cavity) / b;
  const x = (omega * Math.sqrt(mass / bending) * b * b) / (Math.PI * Math.PI);
  share /= 1 + x * x;
  const held = Math.sqrt(own / (ribbedMass ** 3 * Math.sqrt(ribbed * bending)));
  return 1 - share * (1 - Math.min(held, 1));
}
