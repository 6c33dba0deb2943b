import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    baseURL: string;
  }
}

export default async function setup(project: TestProject) {
  await build({ configFile: 'vite.config.ts', logLevel: 'warn' });
  const server = await preview({
    configFile: 'vite.config.ts',
    logLevel: 'warn',
    preview: { host: '127.0.0.1', port: 4400 },
  });
  project.provide('baseURL', server.resolvedUrls?.local[0] ?? '');
  return async () => {
    await server.close();
  };
}
