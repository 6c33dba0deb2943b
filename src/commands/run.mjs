// Runs one of the TypeScript commands of this folder: node src/commands/run.mjs NAME [arguments]
// Node 20 does not read TypeScript, so the command is bundled first, and again only when a source file is newer.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const [name = '', ...rest] = process.argv.slice(2);
const entry = join(root, 'src/commands', `${name}.ts`);
if (!/^[a-z-]+$/.test(name) || !existsSync(entry)) {
  console.error(`The command must be one of src/commands/*.ts, got ${JSON.stringify(name)}`);
  process.exit(2);
}
const folder = join(root, 'node_modules/.cache/slab-and-spring', name);
const bundle = join(folder, `${name}.mjs`);
if (!existsSync(bundle) || statSync(bundle).mtimeMs < newestSource()) await bundleCommand();

process.argv = [process.execPath, entry, ...rest];
await import(pathToFileURL(bundle).href);

function newestSource() {
  const folders = ['src', 'cells', 'workers', 'tests/bench', 'tests/published'].map((f) => join(root, f));
  const files = folders.filter(existsSync).flatMap((f) =>
    readdirSync(f, { recursive: true, withFileTypes: true })
      .filter((e) => e.isFile())
      .map((e) => join(e.parentPath, e.name)),
  );
  return Math.max(...[...files, join(root, 'package-lock.json')].map((f) => statSync(f).mtimeMs));
}

async function bundleCommand() {
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: entry,
      outDir: folder,
      emptyOutDir: true,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
  });
}
