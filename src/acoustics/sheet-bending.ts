import type { Leaf, Sheet } from './construction.ts';

/**
 * What each sheet adds to the static stiffness of the leaf, N·m: its own where sheets slide or, statically, a damping layer
 * shears; in a bonded leaf, one section, also what it is stretched, Eh/(1−ν²) times its distance from the neutral axis squared.
 */
export function bendingParts_Nm(leaf: Leaf, modulusOf: (sheet: Sheet) => number): number[] {
  const own = leaf.sheets.map((s) => sheetBending_Nm(s, modulusOf(s)));
  if (leaf.contact !== 'bonded') return own;
  const inPlane = leaf.sheets.map((s) => sheetInPlane_N_m(s, modulusOf(s)));
  let depth = 0;
  const middles = leaf.sheets.map(({ thickness_m: h }) => {
    depth += h;
    return depth - h / 2;
  });
  const axis = total(inPlane.map((d, i) => d * middles[i]!)) / total(inPlane);
  return own.map((bending, i) => bending + inPlane[i]! * (middles[i]! - axis) ** 2);
}

/** Sum; 0 of nothing. */
export const total = (parts: readonly number[]): number => parts.reduce((sum, part) => sum + part, 0);

/** Eh³/12(1−ν²), N·m. */
export function sheetBending_Nm(sheet: Sheet, modulus_Pa: number): number {
  const { thickness_m: h, poissonRatio: nu } = sheet;
  return (modulus_Pa * h * h * h) / (12 * (1 - nu * nu));
}

/** Eh/(1−ν²), N/m: stretched with the other direction kept from contracting. */
export function sheetInPlane_N_m({ thickness_m, poissonRatio: nu }: Sheet, modulus_Pa: number): number {
  return (modulus_Pa * thickness_m) / (1 - nu * nu);
}

/** Geometric mean of both directions, Pa. */
export function meanModulus_Pa(sheet: Sheet): number {
  return Math.sqrt(sheet.youngsModulus_Pa * (sheet.youngsModulusAcross_Pa ?? sheet.youngsModulus_Pa));
}

/** √(E/(ρ(1−ν²))), m/s. */
export function longitudinalSpeed_m_s(sheet: Sheet): number {
  const { poissonRatio: nu } = sheet;
  return Math.sqrt(meanModulus_Pa(sheet) / (sheet.density_kg_m3 * (1 - nu * nu)));
}
