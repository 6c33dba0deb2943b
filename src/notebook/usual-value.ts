import type { IsUsual } from './describe-changes.ts';
import { impliedLiteral } from './field-literal.ts';
import { fieldsUsing } from './field-use.ts';

/** Whether every field that refers to a parameter would hold its value if the field were absent: asks the engine. */
export const isUsualValue: IsUsual = (notebook, key, values) => {
  const uses = fieldsUsing(notebook, key);
  return (
    uses.length > 0 && uses.every(({ stack, path }) => impliedLiteral(notebook, stack, path, values) === values[key])
  );
};
