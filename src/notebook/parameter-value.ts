import type { Parameter, ParameterValue } from './types.ts';

/** Why a parameter does not accept a value, as one sentence; undefined if it does. */
function parameterValueProblem(parameter: Parameter, value: ParameterValue): string | undefined {
  if ('choices' in parameter) {
    if (parameter.choices.some((c) => c.value === value)) return undefined;
    return `${parameter.label} must be ${expectedValue(parameter)}, got ${JSON.stringify(value)}`;
  }
  if (typeof value === 'number' && value >= parameter.min && value <= parameter.max) return undefined;
  return `${parameter.label} must be ${expectedValue(parameter)}, got ${JSON.stringify(value)}`;
}

/** What a parameter accepts, in words. */
function expectedValue(parameter: Parameter): string {
  return 'choices' in parameter
    ? `one of ${parameter.choices.map((c) => `"${c.value}"`).join(', ')}`
    : `a number from ${parameter.min} to ${parameter.max}`;
}

/** @throws TypeError for the wrong kind of value, RangeError for one that is not accepted. */
export function requireParameterValue(parameter: Parameter, value: ParameterValue): void {
  const problem = parameterValueProblem(parameter, value);
  if (!problem) return;
  const rightKind = typeof value === ('choices' in parameter ? 'string' : 'number');
  throw rightKind ? new RangeError(problem) : new TypeError(problem);
}
