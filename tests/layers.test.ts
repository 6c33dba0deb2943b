import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = resolve(fileURLToPath(new URL('..', import.meta.url)));

/** What each folder may import from, itself included: imports point downward only. */
const ALLOWED: Record<string, readonly string[]> = {
  'src/acoustics': ['src/acoustics'],
  'src/quantities': ['src/quantities'],
  'src/notebook': ['src/notebook', 'src/acoustics', 'src/quantities'],
  'src/store': ['src/store', 'src/notebook', 'src/acoustics', 'src/quantities'],
  'src/charts': ['src/charts', 'src/notebook', 'src/acoustics', 'src/quantities'],
  workers: ['workers', 'src/notebook', 'src/acoustics', 'src/quantities'],
  cells: ['cells', 'src/charts', 'src/store', 'workers', 'src/notebook', 'src/acoustics', 'src/quantities'],
};

/** Only these packages may be imported from the pure folders. */
const PURE_PACKAGES: Record<string, readonly string[]> = {
  'src/acoustics': [],
  'src/quantities': [],
  'src/notebook': ['valibot'],
};

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile() && /\.(ts|mjs)$/.test(e.name))
    .map((e) => join(e.parentPath, e.name));
}

function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  // A text that begins with such a word is no import.
  return [...text.matchAll(/(?<!['"])(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g)].map((m) => m[1]!);
}

function folderOf(file: string, specifier: string): string | undefined {
  if (specifier.startsWith('#')) return specifier.slice(1);
  if (specifier.startsWith('.')) return relative(root, resolve(dirname(file), specifier));
  return undefined;
}

test.each(Object.keys(ALLOWED))('%s imports only from its own layer and below', (folder) => {
  const wrong = filesUnder(folder).flatMap((file) =>
    importsOf(file)
      .map((specifier) => ({ specifier, target: folderOf(file, specifier) }))
      .filter(({ target }) => target && !ALLOWED[folder]!.some((a) => target === a || target.startsWith(`${a}/`)))
      .map(({ specifier }) => `${relative(root, file)} imports ${specifier}`),
  );
  expect(wrong).toEqual([]);
});

test.each(Object.keys(PURE_PACKAGES))('%s imports no package but those named', (folder) => {
  const wrong = filesUnder(folder).flatMap((file) =>
    importsOf(file)
      .filter((specifier) => !folderOf(file, specifier) && !PURE_PACKAGES[folder]!.includes(specifier))
      .map((specifier) => `${relative(root, file)} imports ${specifier}`),
  );
  expect(wrong).toEqual([]);
});
