import { posix } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin } from 'vite';

const MARK = '\0left-out:';

/**
 * Builds without packages, or single modules of packages (`package/src/module.js`), that a dependency imports for what
 * this page never does. Their exports are functions that do nothing, since some are called when the dependency starts.
 * Whoever comes to use one takes it off the list: the sources run with everything, only the built page goes without.
 */
export function leftOut(parts: readonly string[]): Plugin {
  return {
    name: 'left-out',
    apply: 'build',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!parts.some((part) => isPart(part, source, importer))) return null;
      const real = await this.resolve(source, importer, { skipSelf: true });
      return real && `${MARK}${real.id}`;
    },
    async load(id) {
      if (!id.startsWith(MARK)) return null;
      const exported = Object.keys(await import(pathToFileURL(id.slice(MARK.length)).href));
      return ['const nothing = () => {};', ...exported.map((name) => `export const ${name} = nothing;`)].join('\n');
    },
  };
}

function isPart(part: string, source: string, importer: string | undefined): boolean {
  if (!source.startsWith('.') || !importer) return source === part;
  return posix.join(posix.dirname(importer), source).endsWith(`/node_modules/${part}`);
}
