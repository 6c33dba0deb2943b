/** How much JavaScript a browser needs before the first curve of the demo stands there, counted in the built files. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Plugin, parseAst } from 'vite';

/** Our own choice: a second or so on a slow mobile line, bytes after gzip. */
export const FIRST_LOAD_BUDGET_bytes = 150_000;

/** What the first curve loads beside the page itself: the cell's element and the worker. */
const ALSO_NEEDED = ['curves-cell', 'predict.worker'];

export interface LoadedScript {
  /** Relative to the built folder, with forward slashes. */
  readonly path: string;
  readonly gzip_bytes: number;
}

/** The scripts of the first curve, biggest first. @throws Error if the folder lacks one of them. */
export function firstLoad(folder: string): readonly LoadedScript[] {
  const paths = new Set<string>();
  const take = (path: string) => {
    if (paths.has(path)) return;
    paths.add(path);
    for (const next of staticImports(readFileSync(join(folder, path), 'utf8')))
      take(posix.join(posix.dirname(path), next));
  };
  take(entryScript(folder));
  for (const name of ALSO_NEEDED) take(`assets/${builtScript(folder, name)}`);
  return [...paths]
    .map((path) => ({ path, gzip_bytes: gzipSync(readFileSync(join(folder, path))).length }))
    .toSorted((a, b) => b.gzip_bytes - a.gzip_bytes);
}

export function totalSize_bytes(scripts: readonly LoadedScript[]): number {
  return scripts.reduce((sum, { gzip_bytes }) => sum + gzip_bytes, 0);
}

/** Prints the sum after each build. */
export const firstLoadReport: Plugin = {
  name: 'first-load-report',
  apply: 'build',
  writeBundle({ dir }) {
    // Commands are built as well, and have no page.
    if (!dir || this.environment.name !== 'client') return;
    const scripts = firstLoad(dir);
    const kB = (bytes: number) => (bytes / 1000).toFixed(1);
    this.info(
      `JavaScript before the first curve: ${kB(totalSize_bytes(scripts))} kB gzip in ${scripts.length} files ` +
        `(budget ${kB(FIRST_LOAD_BUDGET_bytes)} kB)`,
    );
  },
};

function entryScript(folder: string): string {
  const html = readFileSync(join(folder, 'index.html'), 'utf8');
  const source = /<script[^>]+type="module"[^>]+src="\.\/([^"]+)"/.exec(html)?.[1];
  if (!source) throw new Error(`index.html must have a module script, found none (${folder})`);
  return source;
}

function builtScript(folder: string, name: string): string {
  const found = readdirSync(join(folder, 'assets')).find((file) => file.startsWith(`${name}-`) && file.endsWith('.js'));
  if (!found) throw new Error(`assets must hold a script "${name}", found none (${folder})`);
  return found;
}

function staticImports(code: string): readonly string[] {
  return parseAst(code).body.flatMap((statement) =>
    'source' in statement && statement.source ? [String(statement.source.value)] : [],
  );
}
