import type { FloorModel } from './floor-model.ts';
import { ForcedRadiation } from './forced-radiation.ts';
import { gaussLegendre } from './gauss-legendre.ts';
import { coincidence_Hz, type PlateState, plateAt } from './leaf-plate.ts';
import { panelRadiation } from './panel-radiation.ts';

/** Enough for a curve without peaks, within 0.1 dB. */
const ANGLES = 6;

/** Between these ratios to the common critical frequency neither term holds. */
const COINCIDING = { from: Math.SQRT1_2, to: 1.3 };

/**
 * Transmission loss of the floor if nothing gave way between its leaves, dB: as of one leaf of loose sheets with the mass and the
 * stiffness of all. Forced waves below the critical frequency of that leaf, as in `airborne.ts`, and its reverberant field; NaN
 * near it.
 */
export function movingAsOne_dB(model: FloorModel, bands_Hz: readonly number[]): number[] {
  const { air, plates, edges } = model;
  const c = air.soundSpeed_m_s;
  const z0 = air.density_kg_m3 * c;
  const mass = plates.reduce((sum, { surfaceMass_kg_m2 }) => sum + surfaceMass_kg_m2, 0);
  const { nodes, weights } = gaussLegendre(ANGLES);
  const forced = new ForcedRadiation();
  const state: PlateState = { bending_Nm: 0, lossFactor: 0 };
  return bands_Hz.map((f_Hz) => {
    let bending_Nm = 0;
    let lost_Nm = 0;
    for (const plate of plates) {
      plateAt(plate, f_Hz, state);
      bending_Nm += state.bending_Nm;
      lost_Nm += state.bending_Nm * state.lossFactor;
    }
    const fc_Hz = coincidence_Hz(mass, bending_Nm, air);
    if (f_Hz > COINCIDING.from * fc_Hz && f_Hz < COINCIDING.to * fc_Hz) return Number.NaN;
    const omega = 2 * Math.PI * f_Hz;
    let tau = 0;
    if (f_Hz < fc_Hz) {
      forced.prepare(omega / c, edges.area_m2, edges.perimeter_m);
      nodes.forEach((x, j) => {
        const u = (1 + x) / 2;
        const bends = (f_Hz / fc_Hz) ** 2 * (1 - u * u) ** 2;
        tau += (weights[j]! * 4 * z0 * z0 * forced.at(u)) / ((omega * mass * (1 - bends)) ** 2 + ((2 * z0) / u) ** 2);
      });
    }
    const sigma = panelRadiation(f_Hz, fc_Hz, edges, c);
    tau += (2 * z0 * z0 * sigma * sigma * fc_Hz * bending_Nm) / (2 * f_Hz * f_Hz * mass * mass * omega * lost_Nm);
    return -10 * Math.log10(tau);
  });
}
