import { energySum_dB } from '../ratings/energy.ts';
import { leastVibrationReductionIndex_dB } from './vibration-reduction.ts';

export interface FlankingPathInput {
  /** R of the flanking element in the source room and of the one in the receiving room, dB: weighted, or of one band. */
  readonly sourceR_dB: number;
  readonly receivingR_dB: number;
  /** Improvement by linings on each, dB; 0: bare. */
  readonly sourceLining_dB: number;
  readonly receivingLining_dB: number;
  readonly vibrationReductionIndex_dB: number;
  /** Area of the separating floor or wall, S_s, m². */
  readonly separatingArea_m2: number;
  readonly junctionLength_m: number;
}

/**
 * R_ij = (R_i + R_j)/2 + ΔR_ij + K_ij + 10 lg(S_s/(l0 l_ij)), l0 = 1 m. Of two linings the better counts in full, the other
 * by half.
 *
 * Source: EN 12354-1:2000, clause 4.4 (from memory, unverified).
 */
export function flankingPathR_dB(path: FlankingPathInput): number {
  const { sourceLining_dB, receivingLining_dB, separatingArea_m2, junctionLength_m } = path;
  const better = Math.max(sourceLining_dB, receivingLining_dB);
  const worse = Math.min(sourceLining_dB, receivingLining_dB);
  return (
    (path.sourceR_dB + path.receivingR_dB) / 2 +
    better +
    worse / 2 +
    path.vibrationReductionIndex_dB +
    10 * Math.log10(separatingArea_m2 / junctionLength_m)
  );
}

/** One element beside the separating floor, continuing from room to room past their junction. */
export interface FlankingElement {
  readonly name: string;
  /** R_w of its part in the source room and of its part in the receiving room, dB. */
  readonly sourceRw_dB: number;
  readonly receivingRw_dB: number;
  /** Areas of the two parts, m²: they set the least K_ij. */
  readonly sourceArea_m2: number;
  readonly receivingArea_m2: number;
  readonly junctionLength_m: number;
  /** K_ij on through the junction (F to f) and around it (F to d, D to f), dB. */
  readonly straightK_dB: number;
  readonly cornerK_dB: number;
  /** ΔR_w of linings on its two parts, dB. */
  readonly sourceLining_dB?: number;
  readonly receivingLining_dB?: number;
}

export interface SeparatingElement {
  readonly Rw_dB: number;
  readonly area_m2: number;
  /** ΔR_w of linings on its two sides, dB. */
  readonly sourceLining_dB?: number;
  readonly receivingLining_dB?: number;
}

/** D, d: the separating element; F, f: the flanking one; capital in the source room, small in the receiving room. */
export type Route = 'Dd' | 'Ff' | 'Fd' | 'Df';

export interface FlankingPath {
  readonly route: Route;
  /** Name of the flanking element; empty for Dd. */
  readonly name: string;
  readonly Rw_dB: number;
  /** Share of the transmitted energy, 0–1. */
  readonly share: number;
}

export interface ApparentReduction {
  /** R'_w, dB, unrounded. */
  readonly Rw_dB: number;
  readonly paths: readonly FlankingPath[];
}

/**
 * Simplified model for one floor or wall between two rooms: R'_w and what each path carries.
 *
 * Source: EN 12354-1:2000, clause 4.4; standard deviation about 2 dB (clause 5). For homogeneous elements with R_w from
 * laboratory tests; corner paths use the separating element's R_w and the area S_s. K_ij never counts for less than its
 * geometrical minimum.
 * @throws RangeError for an area or length that is not above 0.
 */
export function flankingSimplified(
  separating: SeparatingElement,
  flanking: readonly FlankingElement[],
): ApparentReduction {
  requirePositive('separating area_m2', separating.area_m2);
  const D = { R: separating.Rw_dB, area: separating.area_m2, lining: separating.sourceLining_dB ?? 0 };
  const d = { ...D, lining: separating.receivingLining_dB ?? 0 };
  const direct = D.R + Math.max(D.lining, d.lining) + Math.min(D.lining, d.lining) / 2;

  const around = flanking.flatMap((element) => {
    requirePositive(`sourceArea_m2 of "${element.name}"`, element.sourceArea_m2);
    requirePositive(`receivingArea_m2 of "${element.name}"`, element.receivingArea_m2);
    requirePositive(`junctionLength_m of "${element.name}"`, element.junctionLength_m);
    const F = { R: element.sourceRw_dB, area: element.sourceArea_m2, lining: element.sourceLining_dB ?? 0 };
    const f = { R: element.receivingRw_dB, area: element.receivingArea_m2, lining: element.receivingLining_dB ?? 0 };
    const path = (route: Route, from: typeof F, to: typeof F, K_dB: number) => ({
      route,
      name: element.name,
      Rw_dB: flankingPathR_dB({
        sourceR_dB: from.R,
        receivingR_dB: to.R,
        sourceLining_dB: from.lining,
        receivingLining_dB: to.lining,
        vibrationReductionIndex_dB: Math.max(
          K_dB,
          leastVibrationReductionIndex_dB(element.junctionLength_m, from.area, to.area),
        ),
        separatingArea_m2: separating.area_m2,
        junctionLength_m: element.junctionLength_m,
      }),
    });
    return [
      path('Ff', F, f, element.straightK_dB),
      path('Fd', F, d, element.cornerK_dB),
      path('Df', D, f, element.cornerK_dB),
    ];
  });

  const all = [{ route: 'Dd' as Route, name: '', Rw_dB: direct }, ...around];
  const Rw_dB = -energySum_dB(all.map((p) => -p.Rw_dB));
  return { Rw_dB, paths: all.map((p) => ({ ...p, share: 10 ** ((Rw_dB - p.Rw_dB) / 10) })) };
}

/** The same band by band; R_w in the names then means the R of one band. */
export interface FlankingBands {
  readonly separating: Omit<SeparatingElement, 'Rw_dB'> & { readonly R_dB: readonly number[] };
  readonly flanking: readonly (Omit<FlankingElement, 'sourceRw_dB' | 'receivingRw_dB'> & {
    readonly sourceR_dB: readonly number[];
    readonly receivingR_dB: readonly number[];
  })[];
}

/**
 * R' of every band, dB, by the same paths: the detailed model of EN 12354-1:2000, clause 4.2, with laboratory values in
 * place of those in the building. Linings enter as one number for all bands.
 */
export function flankingByBand_dB({ separating, flanking }: FlankingBands): number[] {
  return separating.R_dB.map((Rw_dB, i) => {
    const elements = flanking.map(({ sourceR_dB, receivingR_dB, ...element }) => ({
      ...element,
      sourceRw_dB: sourceR_dB[i] ?? NaN,
      receivingRw_dB: receivingR_dB[i] ?? NaN,
    }));
    return flankingSimplified({ ...separating, Rw_dB }, elements).Rw_dB;
  });
}

function requirePositive(name: string, value: number): void {
  if (!(value > 0)) throw new RangeError(`${name} must be > 0, got ${value}`);
}
