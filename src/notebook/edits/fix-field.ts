import { type FieldPath, getField } from '../field-path.ts';
import { fieldsUsing } from '../field-use.ts';
import { findStack } from '../find.ts';
import type { Notebook } from '../types.ts';
import { isReference } from '../values.ts';
import { makeLiteral } from './make-literal.ts';
import { removeParameter } from './remove-parameter.ts';

/**
 * As `makeLiteral`, and with its last field the parameter goes too: what stayed would be a slider that moves nothing.
 *
 * @throws RangeError if the field is a literal already.
 */
export function fixField(notebook: Notebook, stackId: string, path: FieldPath): Notebook {
  const field = getField(findStack(notebook, stackId), path);
  const fixed = makeLiteral(notebook, stackId, path);
  if (field === undefined || !isReference(field) || fieldsUsing(fixed, field.parameter).length > 0) return fixed;
  return removeParameter(fixed, field.parameter);
}
