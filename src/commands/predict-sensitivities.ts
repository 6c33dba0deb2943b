import type { NumberStudy, StudiedNumber } from '#src/acoustics/number-study.ts';
import { TENTH, tenthMore_dB } from '#src/acoustics/tenth-more.ts';
import type { NamedNumber } from './named-number.ts';

/** What a tenth more of each number does, each by itself. */
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

export function stackSensitivities(
  { numbers, atTheEdge }: NumberStudy,
  named: (number: StudiedNumber) => NamedNumber,
): StackSensitivities {
  return {
    change: TENTH,
    numbers: [
      ...numbers.map((number) => ({
        ...named(number),
        dR_dB: tenthMore_dB(number.dR_dB),
        dLn_dB: tenthMore_dB(number.dLn_dB),
      })),
      ...atTheEdge.map((number) => ({ ...named(number), dR_dB: null, dLn_dB: null, reason: number.reason })),
    ],
  };
}
