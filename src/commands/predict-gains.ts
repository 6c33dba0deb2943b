import type { Prediction } from '#src/acoustics/prediction.ts';

/** What a stack gains over the same stack in the reference scenario; more is better everywhere but in mass and height. */
export interface StackGain {
  /** Name of the reference scenario. */
  readonly over: string;
  /** R less that of the reference, per band. */
  readonly R_dB: readonly number[];
  /** Drop of Ln, per band. */
  readonly Ln_dB: readonly number[];
  readonly STC: number;
  readonly OITC: number;
  readonly Rw: number;
  readonly IIC: number;
  /** Drop of Ln,w. */
  readonly Lnw: number;
  readonly addedMass_kg_m2: number;
  readonly addedHeight_m: number;
}

export function gainOver(over: string, reference: Prediction, stack: Prediction): StackGain {
  const more = (now: readonly number[], then: readonly number[]) => now.map((value, i) => value - then[i]!);
  const rating = (key: 'STC' | 'OITC' | 'Rw' | 'IIC') => stack.ratings[key] - reference.ratings[key];
  return {
    over,
    R_dB: more(stack.R_dB, reference.R_dB),
    Ln_dB: more(reference.Ln_dB, stack.Ln_dB),
    STC: rating('STC'),
    OITC: rating('OITC'),
    Rw: rating('Rw'),
    IIC: rating('IIC'),
    Lnw: reference.ratings.Lnw - stack.ratings.Lnw,
    addedMass_kg_m2: stack.surfaceMass_kg_m2 - reference.surfaceMass_kg_m2,
    addedHeight_m: stack.height_m - reference.height_m,
  };
}
