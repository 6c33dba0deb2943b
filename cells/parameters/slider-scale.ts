/** A slider counts whole steps, so that it lands on round numbers of the unit people see. */
import type { QuantityParameter, UnitSystem } from '#src/notebook/types.ts';
import { displayValue, fromDisplayValue, smallestStepShown, unitOf } from '#src/quantities/format-quantity.ts';

export interface SliderScale {
  /** First and last position, whole numbers of steps. */
  readonly min: number;
  readonly max: number;
  toPosition(value: number): number;
  /** SI, inside the parameter's range. */
  toValue(position: number): number;
}

export function sliderScale(parameter: QuantityParameter, units: UnitSystem): SliderScale {
  const { min, max, quantity } = parameter;
  const step = stepShown(parameter, units);
  const position = (value: number) => displayValue(value, quantity, units) / step;
  return {
    min: Math.floor(position(min) + 1e-9),
    max: Math.ceil(position(max) - 1e-9),
    toPosition: (value) => Math.round(position(value)),
    toValue: (at) => Math.min(max, Math.max(min, clean(fromDisplayValue(clean(at * step), quantity, units)))),
  };
}

/**
 * The parameter's own step in SI; its round neighbour in inch-pound units, a binary fraction for inches, but no step that
 * would leave the number beside the slider as it is.
 */
function stepShown({ quantity, step, min, max }: QuantityParameter, units: UnitSystem): number {
  const shown = displayValue(step, quantity, units);
  if (units === 'SI') return clean(shown);
  if (unitOf(quantity, units) === 'in') return 2 ** Math.max(-4, Math.round(Math.log2(shown)));
  const largest = Math.max(Math.abs(min), Math.abs(max));
  return Math.max(roundNumberNear(shown), smallestStepShown(largest, quantity, units));
}

/** 1, 2 or 5 times a power of ten. */
function roundNumberNear(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  const lead = value / power;
  return clean((lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10) * power);
}

/** Takes off what floating point added: 3 · 0.1 → 0.3. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
