import { parseArgs } from 'node:util';

/** Names of options, each with or without a value. */
export type Options = Readonly<Record<string, { readonly type: 'boolean' | 'string'; readonly short?: string }>>;

export interface Arguments<O extends Options> {
  readonly values: { readonly [Name in keyof O]: O[Name]['type'] extends 'boolean' ? boolean : string | undefined };
  readonly positionals: readonly string[];
}

/**
 * What stands on the command line, or one sentence on what is wrong with it. A value may begin with one dash, so that `-5` is
 * refused as a number that is too small, and not as an option.
 */
export function readArguments<O extends Options>(args: readonly string[], options: O): Arguments<O> | string {
  const { tokens, positionals } = parseArgs({
    args: [...args],
    options,
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const values: Record<string, boolean | string | undefined> = {};
  for (const [name, { type }] of Object.entries(options)) values[name] = type === 'boolean' ? false : undefined;
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    const option = Object.hasOwn(options, name) ? options[name]! : undefined;
    if (!option) return `Expected one of the options ${namesOf(options)}, got ${rawName}.`;
    if (option.type === 'boolean') {
      if (value !== undefined) return `Expected nothing behind ${rawName}, got "${value}".`;
      values[name] = true;
      continue;
    }
    if (value === undefined) return `Expected a value behind ${rawName}, got none.`;
    if (!token.inlineValue && value.startsWith('--')) return `Expected a value behind ${rawName}, got ${value}.`;
    values[name] = value;
  }
  return { values: values as Arguments<O>['values'], positionals };
}

function namesOf(options: Options): string {
  return Object.keys(options)
    .map((name) => `--${name}`)
    .join(', ');
}
