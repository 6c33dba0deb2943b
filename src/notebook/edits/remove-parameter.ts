import { fieldsUsing } from '../field-use.ts';
import { findParameter } from '../find.ts';
import { replacedWhere } from '../lists.ts';
import type { Notebook } from '../types.ts';
import { withoutChange } from './scenario-changes.ts';

/**
 * Takes a parameter that no stack refers to out of the notebook, its changes and the parameters cells.
 *
 * @throws RangeError if it is still in use.
 */
export function removeParameter(notebook: Notebook, key: string): Notebook {
  const parameter = findParameter(notebook, key);
  const [use] = fieldsUsing(notebook, key);
  if (use) throw new RangeError(`parameter to remove must be unused, got "${key}" used in ${use.label}`);
  const parameters = notebook.parameters.filter((p) => p !== parameter);
  const cells = replacedWhere(
    notebook.cells,
    (c) => c.kind === 'parameters' && c.parameters.includes(key),
    (c) => (c.kind === 'parameters' ? { ...c, parameters: c.parameters.filter((k) => k !== key) } : c),
  );
  const without: Notebook = { ...notebook, parameters, cells };
  return notebook.scenarios.reduce((next, s) => withoutChange(next, s.id, key), without);
}
