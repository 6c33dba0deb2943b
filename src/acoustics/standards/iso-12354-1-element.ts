import { type Air, ROOM_AIR } from '../air.ts';
import { MAXIMUM_RADIATION, resonantRadiation } from '../resonant-radiation.ts';
import { shearRise } from '../thick-plate.ts';
import { exactBandOf } from './iec-61260.ts';

/** A homogeneous wall or slab. */
export interface HomogeneousElement {
  readonly surfaceMass_kg_m2: number;
  readonly thickness_m: number;
  /** c_L, m/s: see `iso-12354-1-materials.ts`. */
  readonly longitudinalSpeed_m_s: number;
  readonly internalLossFactor: number;
  readonly length_m: number;
  readonly height_m: number;
}

/**
 * Sound reduction index of a homogeneous element in the laboratory, one-third octave by one-third octave, dB: what
 * flanking walls are fed into the flanking model with. (Floors are predicted by the engine itself.)
 *
 * Source: EN 12354-1:2000, Annex B (from memory, unverified); the edition of 2017 is reported to contain errors. Of its
 * effective critical frequency the branch below fp = cL/5.5h is taken, and goes on until R comes to the plateau of thickness
 * resonances. The standard's branch beyond fp, 2 fc (f/fp)³, is a plateau too, for concrete the same within 1 dB; in lighter
 * masonry it overtakes the frequency itself, so that a wall would fall below coincidence a second time, and then rise by up
 * to 20 dB from one band to the next.
 * @param bands_Hz Nominal one-third octaves.
 * @throws RangeError for a band that is not a nominal one.
 */
export function homogeneousReduction_dB(
  element: HomogeneousElement,
  bands_Hz: readonly number[],
  air: Air = ROOM_AIR,
): number[] {
  return bands_Hz.map((band_Hz) => -10 * Math.log10(transmission(element, band_Hz, air)));
}

/**
 * Transmission coefficient of what resonances across the thickness let through at least, the plateau
 * R = 20 lg(ρ cL/4ρ0c0) + 10 lg(η/0.02).
 *
 * Source: S. Ljunggren 1991, as C. Hopkins, Sound Insulation, 2007, has it (from memory, unverified).
 */
function plateauTransmission(element: HomogeneousElement, eta: number, { density_kg_m3, soundSpeed_m_s }: Air): number {
  const impedance = (element.surfaceMass_kg_m2 / element.thickness_m) * element.longitudinalSpeed_m_s;
  return ((4 * density_kg_m3 * soundSpeed_m_s) / impedance) ** 2 * (0.02 / eta);
}

function transmission(element: HomogeneousElement, band_Hz: number, air: Air): number {
  const { surfaceMass_kg_m2: m, thickness_m: h, longitudinalSpeed_m_s: cL, length_m, height_m } = element;
  const { lower_Hz, middle_Hz: f, upper_Hz } = exactBandOf(band_Hz);
  const c0 = air.soundSpeed_m_s;
  const thin_Hz = c0 ** 2 / (1.8 * cL * h);
  // Shear makes thick elements softer: the effective critical frequency rises with frequency.
  const fc = thin_Hz * shearRise(f, h, cL);
  const eta = element.internalLossFactor + m / (485 * Math.sqrt(f));
  const sigma = freeRadiation(f, fc, length_m, height_m, c0);
  const mass = ((2 * air.density_kg_m3 * c0) / (2 * Math.PI * f * m)) ** 2;
  if (fc >= lower_Hz && fc < upper_Hz) return (mass * Math.PI * sigma ** 2) / (2 * eta);
  if (f > fc)
    return Math.max((mass * Math.PI * fc * sigma ** 2) / (2 * f * eta), plateauTransmission(element, eta, air));
  const shape = (length_m + height_m) ** 2 / (length_m ** 2 + height_m ** 2);
  return mass * (2 * forcedRadiation(f, length_m, height_m, c0) + (shape * Math.sqrt(fc / f) * sigma ** 2) / eta);
}

/** Radiation factor of forced waves, (B.2): the logarithm of size over wavelength, less a term of shape. */
function forcedRadiation(f_Hz: number, length_m: number, height_m: number, c0: number): number {
  const long = Math.max(length_m, height_m);
  const short = Math.min(length_m, height_m);
  const k0 = (2 * Math.PI * f_Hz) / c0;
  const ratio = short / long;
  const shape =
    -0.964 -
    (0.5 + ratio / Math.PI) * Math.log(ratio) +
    (5 * ratio) / (2 * Math.PI) -
    1 / (4 * Math.PI * long * short * k0 ** 2);
  const sigma = (Math.log(k0 * Math.sqrt(long * short)) - shape) / 2;
  // Far below the wavelength the expression leaves its range and turns negative.
  return Math.min(Math.max(sigma, 0), MAXIMUM_RADIATION);
}

/** Radiation factor of free waves, (B.3): plates with modes below fc/2, and stiff small ones without. */
function freeRadiation(f_Hz: number, fc_Hz: number, length_m: number, height_m: number, c0: number): number {
  const f11_Hz = (c0 ** 2 / (4 * fc_Hz)) * (length_m ** -2 + height_m ** -2);
  if (f11_Hz <= fc_Hz / 2) {
    const edges = {
      area_m2: length_m * height_m,
      perimeter_m: 2 * (length_m + height_m),
      length_m,
      width_m: height_m,
    };
    return resonantRadiation(f_Hz, fc_Hz, edges, c0);
  }
  const above = f_Hz > fc_Hz ? 1 / Math.sqrt(1 - fc_Hz / f_Hz) : Number.POSITIVE_INFINITY;
  const below = f_Hz < fc_Hz ? 4 * length_m * height_m * (f_Hz / c0) ** 2 : Number.POSITIVE_INFINITY;
  const between = Math.sqrt((2 * Math.PI * f_Hz * (length_m + height_m)) / (16 * c0));
  return Math.min(above, below, between, MAXIMUM_RADIATION);
}
