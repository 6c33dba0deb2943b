import { carriedAlong } from './carried-along.ts';
import type { FloorModel } from './floor-model.ts';
import type { PlateState } from './leaf-plate.ts';
import { joistBending_Nm2, joistMass_kg_m } from './supports.ts';

/**
 * How much joists hold back the reverberant field of the struck leaf: mean square velocity with them per that without, 0–1.
 *
 * Bending waves longer than two bays (k_B b < π) bend the joists along, as ribs of an orthotropic plate: with B_x = B + EI/b
 * and m'' = m' + m_j/b the mobility falls to 1/(8 √(m'' √(B_x B))), and v² = F² Re Y/(ωηm''). Shorter waves find the bays.
 * A leaf on a mat is held together with the deck, as far as both move as one.
 */
export function ribFactor(model: FloorModel, states: readonly PlateState[], f_Hz: number): number {
  const { plates, interlayers } = model;
  let bending = states[0]!.bending_Nm;
  let mass = plates[0]!.surfaceMass_kg_m2;
  let share = 1;
  let below = interlayers[0];
  if (below?.kind === 'mat') {
    share = carriedAlong(model, f_Hz);
    bending += states[1]!.bending_Nm;
    mass += plates[1]!.surfaceMass_kg_m2;
    below = interlayers[1];
  }
  if (below?.kind !== 'cavity' || below.cavity.joists === 'none') return 1;
  const b = below.cavity.joistSpacing_m;
  const ribbed = bending + joistBending_Nm2(below.cavity) / b;
  const ribbedMass = mass + joistMass_kg_m(below.cavity) / b;
  const x = (2 * Math.PI * f_Hz * Math.sqrt(mass / bending) * b * b) / (Math.PI * Math.PI);
  share /= 1 + x * x;
  const held = Math.sqrt((mass / ribbedMass) ** 3 * Math.sqrt(bending / ribbed));
  return 1 - share * (1 - held);
}
