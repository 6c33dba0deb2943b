import {
  HEAVY_FLOOR,
  HEAVY_FLOOR_CI_DB,
  HEAVY_FLOOR_LNW_DB,
  LIGHT_FLOORS,
  LIGHT_FLOORS_LNW_DB,
  type LightFloorType,
  REFERENCE_COVERING,
  REFERENCE_COVERING_DLW_DB,
} from '../standards/iso-717-2-reference-floors.ts';
import { type BandTable, bandsOf, valuesOf } from '../standards/table.ts';
import { type Lnw, lnw } from './lnw.ts';
import { toTenths } from './rounding.ts';
import { type Spectrum, valuesAt } from './spectrum.ts';

export interface DeltaLw {
  /** Weighted reduction of impact sound level by a covering on the heavy reference floor, dB. */
  readonly dLw: number;
  /** C_I,Δ = C_I,r,0 − C_I,r, dB. */
  readonly CIdelta: number;
  /** ΔL_lin = ΔL_w + C_I,Δ, dB. */
  readonly dLlin: number;
  /** Rating of the reference floor with the covering. */
  readonly covered: Lnw;
}

/**
 * Source: ISO 717-2:2020, clauses 5.2 and 5.3, A.2.2 (from memory, unverified).
 * @param improvement ΔL in one-third octaves 100–3150 Hz, dB, measured or predicted on a heavy floor.
 */
export function deltaLw(improvement: Spectrum): DeltaLw {
  const covered = lnw(lessImprovement(HEAVY_FLOOR, improvement));
  const dLw = HEAVY_FLOOR_LNW_DB - covered.Lnw;
  const CIdelta = HEAVY_FLOOR_CI_DB - covered.CI.term_dB;
  return { dLw, CIdelta, dLlin: dLw + CIdelta, covered };
}

/**
 * ΔL_t,w: the same on a lightweight reference floor. Source: ISO 717-2:2020, clause 5.4 (from memory, unverified).
 * @param improvement ΔL_t in one-third octaves 100–3150 Hz, dB.
 */
export function deltaLtw(
  improvement: Spectrum,
  type: LightFloorType,
): { readonly dLtw: number; readonly covered: Lnw } {
  const covered = lnw(lessImprovement(LIGHT_FLOORS[type], improvement));
  return { dLtw: LIGHT_FLOORS_LNW_DB[type] - covered.Lnw, covered };
}

/**
 * Equivalent weighted level of a bare heavy floor, L_n,eq,0,w = L_n,1,w + 19 dB, where L_n,1 is the floor under the
 * reference covering: what a covering's ΔL_w may be taken from. Source: ISO 717-2:2020, Annex B.
 */
export function equivalentLnw(bareFloor: Spectrum): { readonly Lneq0w: number; readonly covered: Lnw } {
  const bands_Hz = bandsOf(REFERENCE_COVERING);
  const bare = valuesAt(bareFloor, bands_Hz).map((value, i) => [bands_Hz[i]!, value] as const);
  const covered = lnw(lessImprovement(bare, { bands_Hz, values_dB: valuesOf(REFERENCE_COVERING) }));
  return { Lneq0w: covered.Lnw + REFERENCE_COVERING_DLW_DB, covered };
}

/** A floor's levels less an improvement, which enters rounded half up to 0.1 dB. */
export function lessImprovement(floor: BandTable, improvement: Spectrum): Spectrum {
  const bands_Hz = bandsOf(floor);
  const reduction = valuesAt(improvement, bands_Hz);
  return { bands_Hz, values_dB: floor.map(([, level_dB], i) => level_dB - toTenths(reduction[i]!) / 10) };
}
