import { COVERING_LOSS_FACTOR } from './covering-loss.ts';
import { COVERING_LIMITS } from './material-limits.ts';
import { pointMobility_m_Ns } from './point-mobility.ts';
import { deltaLw } from './ratings/delta-lw.ts';
import { meanModulus_Pa, sheetBending_Nm } from './sheet-bending.ts';
import { STANDARD_SLAB_SHEET } from './standard-slab.ts';
import { exactBandOf } from './standards/iec-61260.ts';
import { REFERENCE_COVERING } from './standards/iso-717-2-reference-floors.ts';
import { bandsOf } from './standards/table.ts';
import { tappingForce2_N2_Hz } from './tapping-machine.ts';

/** What product sheets state for coverings lies within, dB. Common practice, no source. */
export const STATED_DLW_dB = [1, 50] as const;

const BANDS_Hz = bandsOf(REFERENCE_COVERING);

/** Halvings: the limits are twelve decades apart, so that a stiffness is found to a millionth of itself. */
const HALVINGS = 45;

/**
 * ΔL_w that a covering of this contact stiffness has on the standard slab, dB, a whole number.
 *
 * On a slab of concrete a covering does no more than soften the blow: ΔL = 10 lg of the ratio of the tapping machine's forces on
 * the bare slab and on the covering, in the middle of each band. Its weight is left out, some 0.2 dB for 7 kg/m². What the whole
 * model predicts, and rates, is the same within 1 dB (`tests/acoustics/covering-stiffness.test.ts`).
 */
export function coveringDeltaLw_dB(contactStiffness_N_m: number): number {
  const { thickness_m, density_kg_m3 } = STANDARD_SLAB_SHEET;
  const bending_Nm = sheetBending_Nm(STANDARD_SLAB_SHEET, meanModulus_Pa(STANDARD_SLAB_SHEET));
  const mobility_m_Ns = pointMobility_m_Ns(bending_Nm, density_kg_m3 * thickness_m);
  const values_dB = BANDS_Hz.map((band_Hz) => {
    const { middle_Hz: f_Hz } = exactBandOf(band_Hz);
    const bare = tappingForce2_N2_Hz(f_Hz, mobility_m_Ns, Infinity);
    const covered = tappingForce2_N2_Hz(f_Hz, mobility_m_Ns, contactStiffness_N_m, COVERING_LOSS_FACTOR);
    return 10 * Math.log10(bare / covered);
  });
  return deltaLw({ bands_Hz: BANDS_Hz, values_dB }).dLw;
}

/**
 * The contact stiffness of a covering of which only ΔL_w is known, N/m: the middle, by ratio, of those that have it, to three
 * digits.
 *
 * @param dLw_dB A whole number within `STATED_DLW_dB`; others are rounded.
 */
export function contactStiffnessFor_N_m(dLw_dB: number): number {
  const wanted = Math.round(dLw_dB);
  const middle = Math.sqrt(softestWithout(wanted) * softestWithout(wanted + 1));
  return Number(middle.toPrecision(3));
}

/** The softest covering that does not reach ΔL_w, N/m. */
function softestWithout(dLw_dB: number): number {
  let [soft, hard]: [number, number] = [...COVERING_LIMITS.contactStiffness_N_m];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = Math.sqrt(soft * hard);
    if (coveringDeltaLw_dB(middle) >= dLw_dB) soft = middle;
    else hard = middle;
  }
  return hard;
}
