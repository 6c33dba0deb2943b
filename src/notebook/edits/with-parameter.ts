import { replacedWhere } from '../lists.ts';
import type { Notebook, Parameter, ParameterValue } from '../types.ts';

/** Parts of a parameter that an edit may replace; the caller has checked that they fit. */
export interface ParameterPatch {
  readonly label?: string;
  readonly value?: ParameterValue;
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
}

/** Replaces parts of one parameter. */
export function withParameter(notebook: Notebook, key: string, patch: ParameterPatch): Notebook {
  const parameters = replacedWhere(
    notebook.parameters,
    (p) => p.key === key,
    (p) => ({ ...p, ...patch }) as Parameter,
  );
  return { ...notebook, parameters };
}
