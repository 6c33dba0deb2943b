import { rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    baseURL: string;
    builtFolder: string;
  }
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const configFile = `${root}/vite.config.ts`;
/** A folder of its own, so that testing never replaces what `npm start` or another run of the tests serves. */
const outDir = `${root}/node_modules/.cache/slab-and-spring/end-to-end-${process.pid}`;

export default async function setup(project: TestProject) {
  // What ships is built, not the development variant that a test environment would select.
  process.env.NODE_ENV = 'production';
  await build({ root, configFile, logLevel: 'warn', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    root,
    configFile,
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 4400 },
  });
  project.provide('baseURL', server.resolvedUrls?.local[0] ?? '');
  project.provide('builtFolder', outDir);
  return async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
}
