import type { NumberStudy, StudiedNumber } from '#src/acoustics/number-study.ts';
import { SINGLE_NUMBER_UNCERTAINTY_DB } from '#src/acoustics/standards/iso-12999-1.ts';
import { type BandUncertainty, predictionUncertainty } from '#src/acoustics/uncertainty.ts';
import type { NamedNumber } from './named-number.ts';

/** How far a laboratory may find something else, per band. */
export interface StackUncertainty {
  /** Of R: ISO 12999-1, situation A, and the model's residuals together; 95 % two-sided. */
  readonly R: BandUncertainty;
  /** Of the single numbers between laboratories alone, without the model: ISO 12999-1, situation A, standard uncertainty. */
  readonly betweenLaboratories: { readonly Rw: number; readonly Lnw: number };
  /**
   * What not knowing the construction's numbers exactly does, from assumed tolerances. Measured specimens scatter by them
   * too, so the model's residuals hold a part of it: not to be added to `R`.
   */
  readonly tolerances: ToleranceEffects;
}

export interface ToleranceEffects {
  readonly basis: 'assumed, no source';
  /** All numbers together, as independent. */
  readonly R_dB: readonly number[];
  readonly Ln_dB: readonly number[];
  readonly contributions: readonly Contribution[];
}

/** One standard uncertainty of one number and what it does; null with a reason where it counts as certain. */
export interface Contribution extends NamedNumber {
  readonly standardUncertainty: number | null;
  readonly R_dB: readonly number[] | null;
  readonly Ln_dB: readonly number[] | null;
  readonly reason?: string;
}

export function stackUncertainty(study: NumberStudy, named: (number: StudiedNumber) => NamedNumber): StackUncertainty {
  const { Rw, Lnw } = SINGLE_NUMBER_UNCERTAINTY_DB;
  return {
    R: predictionUncertainty(study.bands_Hz),
    betweenLaboratories: { Rw: Rw.A, Lnw: Lnw.A },
    tolerances: {
      basis: 'assumed, no source',
      R_dB: study.standardR_dB,
      Ln_dB: study.standardLn_dB,
      contributions: [
        ...study.numbers.map((number) => ({
          ...named(number),
          standardUncertainty: number.standardUncertainty,
          R_dB: number.standardR_dB,
          Ln_dB: number.standardLn_dB,
        })),
        ...study.atTheEdge.map((number) => ({
          ...named(number),
          standardUncertainty: null,
          R_dB: null,
          Ln_dB: null,
          reason: number.reason,
        })),
      ],
    },
  };
}
