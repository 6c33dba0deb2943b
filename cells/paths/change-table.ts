/** Which numbers of a floor move its sound most, as the rows of a table. */

import type { Construction } from '#src/acoustics/construction.ts';
import type { NumberStudy, StudiedNumber } from '#src/acoustics/number-study.ts';
import type { Sound } from '#src/acoustics/prediction.ts';
import { tenthMore_dB } from '#src/acoustics/tenth-more.ts';
import { predictionUncertainty } from '#src/acoustics/uncertainty.ts';
import type { Stack, UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import { numberName } from './number-names.ts';

/** Where floors are weakest, and what the rows are sorted by, nominal Hz. */
export const LOW_BANDS_Hz = { first: 50, last: 160 } as const;

/** What is less is shown as 0.0 dB. */
const LEAST_SEEN_dB = 0.05;

/** Also false for no value. */
export const isSeen = (effect_dB: number): boolean => Math.abs(effect_dB) >= LEAST_SEEN_dB;

export interface ChangeRow {
  readonly path: string;
  readonly name: string;
  readonly place: string;
  /** As it is now, with its unit. */
  readonly value: string;
  /** Half width of its assumed range. */
  readonly tolerance: string;
  /** dB per band for a tenth more of it: of R, or of Ln. */
  readonly effects_dB: readonly number[];
}

export interface ChangeTable {
  readonly bands_Hz: readonly number[];
  /** Strongest at low frequencies first. */
  readonly rows: readonly ChangeRow[];
  /** How many numbers move no band that one could see. */
  readonly idle: number;
  /** Names of numbers that have no slope. */
  readonly atTheEdge: readonly string[];
  readonly largest_dB: number;
  /** Standard uncertainty per band by all tolerances. */
  readonly byTolerances_dB: readonly number[];
  /** Standard uncertainty per band between a prediction and a laboratory; known for airborne sound alone. */
  readonly byModel_dB: readonly number[] | undefined;
}

/** What a study was made of. */
export interface Studied {
  readonly construction: Construction;
  readonly stack: Stack;
  readonly study: NumberStudy;
}

export function changeTable({ construction, stack, study }: Studied, sound: Sound, units: UnitSystem): ChangeTable {
  const { bands_Hz, numbers, atTheEdge, standardLn_dB, standardR_dB } = study;
  const all = numbers.map(({ path, value, tolerance, dR_dB, dLn_dB }) => {
    const { name, place, quantity } = numberName(construction, stack, path);
    return {
      path,
      name,
      place,
      value: formatQuantity(value, quantity, units),
      tolerance: `±${Math.round(100 * tolerance)} %`,
      effects_dB: tenthMore_dB(sound === 'impact' ? dLn_dB : dR_dB),
    };
  });
  const rows = all
    .filter(({ effects_dB }) => effects_dB.some(isSeen))
    .toSorted((a, b) => lowStrength(b, bands_Hz) - lowStrength(a, bands_Hz));
  const nameOf = ({ path }: StudiedNumber) => {
    const { name, place } = numberName(construction, stack, path);
    return `${name} (${place})`;
  };
  return {
    bands_Hz,
    rows,
    idle: all.length - rows.length,
    atTheEdge: atTheEdge.map(nameOf),
    largest_dB: Math.max(...rows.flatMap((r) => r.effects_dB.filter(isSeen).map(Math.abs)), LEAST_SEEN_dB),
    byTolerances_dB: sound === 'impact' ? standardLn_dB : standardR_dB,
    byModel_dB: sound === 'impact' ? undefined : predictionUncertainty(bands_Hz).standard_dB,
  };
}

/** Sum of squares over the low bands. */
function lowStrength({ effects_dB }: ChangeRow, bands_Hz: readonly number[]): number {
  const isLow = (band_Hz: number) => band_Hz >= LOW_BANDS_Hz.first && band_Hz <= LOW_BANDS_Hz.last;
  return effects_dB.reduce((sum, v, i) => (isLow(bands_Hz[i]!) && Number.isFinite(v) ? sum + v * v : sum), 0);
}
