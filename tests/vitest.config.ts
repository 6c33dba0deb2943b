import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig, mergeConfig } from 'vitest/config';
import { browserArgs, findBrowser } from '../src/commands/find-browser.mjs';
import viteConfig from '../vite.config.ts';

const executablePath = findBrowser();
const launchOptions = { ...(executablePath ? { executablePath } : {}), args: browserArgs() };

export default mergeConfig(
  viteConfig,
  defineConfig({
    optimizeDeps: {
      include: [
        ...[
          'lit',
          'lit/async-directive.js',
          'lit/decorators.js',
          '@lit/task',
          'lit/directives/live.js',
          'lit/directives/repeat.js',
          '@observablehq/plot',
        ],
        ...['comlink', 'idb-keyval', 'axe-core', 'micromark', 'dompurify', 'valibot'],
      ],
    },
    root: fileURLToPath(new URL('..', import.meta.url)),
    test: {
      reporters: ['default', './tests/summary-reporter.ts'],
      projects: [
        {
          extends: true,
          test: {
            name: 'unit',
            environment: 'node',
            include: ['tests/**/*.test.ts'],
            exclude: ['tests/browser/**', 'tests/e2e/**', 'tests/bench/**'],
            // A busy machine is no failure: the longest property test takes a few seconds on an idle one.
            testTimeout: 60_000,
          },
        },
        {
          extends: true,
          test: {
            name: 'e2e',
            environment: 'node',
            include: ['tests/e2e/**/*.test.ts'],
            globalSetup: ['tests/e2e/setup.ts'],
            testTimeout: 30_000,
            sequence: { groupOrder: 1 },
          },
        },
        {
          extends: true,
          test: {
            name: 'browser',
            setupFiles: ['tests/browser/setup.ts'],
            include: ['tests/browser/**/*.test.ts'],
            browser: {
              enabled: true,
              headless: true,
              screenshotFailures: false,
              provider: playwright({ launchOptions }),
              instances: [{ browser: 'chromium' }],
            },
          },
        },
      ],
    },
  }),
);
