import type { Sheet } from './construction.ts';
import { meanModulus_Pa, sheetBending_Nm } from './sheet-bending.ts';
import { TAPPING_MACHINE } from './tapping-machine.ts';

/** A surface as a hammer finds it before the leaf bends. */
export interface Contact {
  /** Infinity where nothing gives way. */
  readonly stiffness_N_m: number;
  /** Of a hammer bouncing on that stiffness. */
  readonly lossFactor: number;
}

/**
 * Contact of a hammer with a leaf: that of the sheet struck or, where this one is rigid in itself, of the first soft one below
 * it with the blow spread by what lies on it.
 *
 * The soft sheet gives way with s'' = κ/(πa²) per area, a the hammer's radius. Two plates with such a layer between, B1
 * upon B2, each the sum of its sheets as if they slid, give way under a point force, beyond bending together, by
 *
 *   ∫₀^∞ [1/(B1 + B2/(1 + B2k⁴/s'')) − 1/(B1 + B2)] k⁻³ dk/2π,   so that   κ1 = 8 √(B1 s'') (1 + B1/B2)^1.5.
 *
 * κ is added: what the hammer's own face presses together however thin the upper plate. The faster the hammer bounces on that
 * against the upper plate's own bouncing on s'', r = (κ + κ1) m1/(s'' m_h), the more of the blow runs off as waves of that
 * plate before the lower one gives way: loss factor r/(1 + r), our own. A thin rigid sheet so leaves a deck as soft as it
 * was, a topping of usual thickness is as good as rigid.
 *
 * Source: own derivation from thin plates; for B2 → ∞ it is the plate on an elastic foundation, 8 √(B s''), of Hertz
 * (Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 1959, ch. 8; from memory).
 * @param sheets From the struck one down.
 */
export function contactOf(sheets: readonly Sheet[]): Contact {
  let above_Nm = 0;
  let above_kg_m2 = 0;
  let below_Nm = 0;
  let soft_N_m: number | undefined;
  for (const sheet of sheets) {
    soft_N_m ??= sheet.contactStiffness_N_m;
    const bending_Nm = sheetBending_Nm(sheet, meanModulus_Pa(sheet));
    if (soft_N_m === undefined) {
      above_Nm += bending_Nm;
      above_kg_m2 += sheet.density_kg_m3 * sheet.thickness_m;
    } else below_Nm += bending_Nm;
  }
  if (soft_N_m === undefined) return { stiffness_N_m: Infinity, lossFactor: 0 };
  const { hammerRadius_m, hammerMass_kg } = TAPPING_MACHINE;
  const perArea = soft_N_m / (Math.PI * hammerRadius_m ** 2);
  const stiffness_N_m = soft_N_m + 8 * Math.sqrt(above_Nm * perArea) * (1 + above_Nm / below_Nm) ** 1.5;
  const r = (stiffness_N_m * above_kg_m2) / (perArea * hammerMass_kg);
  return { stiffness_N_m, lossFactor: r / (1 + r) };
}
