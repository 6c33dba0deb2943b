import type { Construction } from '#src/acoustics/construction.ts';
import type { PredictOptions } from '#src/acoustics/prediction.ts';
import { sensitivities } from '#src/acoustics/sensitivities.ts';
import type { NamedNumber, NumberedConstruction } from './named-number.ts';

/** What a tenth more of each number does. */
export interface StackSensitivities {
  /** 0.1: by this share each number is made larger. */
  readonly change: number;
  readonly numbers: readonly NumberSensitivity[];
}

/** dB per band for the whole change; null with a reason where it cannot be said. */
export interface NumberSensitivity extends NamedNumber {
  readonly dR_dB: readonly number[] | null;
  readonly dLn_dB: readonly number[] | null;
  readonly reason?: string;
}

const CHANGE = 0.1;

/** The slope at the value itself carried on for the change, d/d(ln x) · ln 1.1; each number by itself. */
export function stackSensitivities(
  { construction, numbers }: NumberedConstruction,
  options: PredictOptions,
): StackSensitivities {
  return { change: CHANGE, numbers: numbers.map((number) => sensitivityOf(construction, number, options)) };
}

/** A number at the edge of what is accepted has no sensitivity, and costs none of the others. */
function sensitivityOf(construction: Construction, number: NamedNumber, options: PredictOptions): NumberSensitivity {
  try {
    const { dR_dB, dLn_dB } = sensitivities(construction, [number.path], options).parameters[0]!;
    const scaled = (slopes: readonly number[]) => slopes.map((slope) => slope * Math.log1p(CHANGE));
    return { ...number, dR_dB: scaled(dR_dB), dLn_dB: scaled(dLn_dB) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ...number, dR_dB: null, dLn_dB: null, reason: error.message };
  }
}
