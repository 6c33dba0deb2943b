// Find a Chrome/Chromium executable. Plain Node, no dependencies.
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'chrome',
  'microsoft-edge',
];

/** @param {string} p */
function usable(p) {
  try {
    accessSync(p, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** @returns {string | undefined} path of a Chromium-family browser */
export function findBrowser() {
  for (const v of ['CHROME_PATH', 'CHROMIUM_PATH', 'CHROME_BIN', 'PUPPETEER_EXECUTABLE_PATH']) {
    const p = process.env[v];
    if (p) {
      if (!existsSync(p)) throw new Error(`${v}=${p} does not exist`);
      return p;
    }
  }
  /** @type {Partial<Record<NodeJS.Platform, string[]>>} */
  const fixed = {
    darwin: [
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    ],
    win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((v) =>
      process.env[v]
        ? [
            join(process.env[v], 'Google/Chrome/Application/chrome.exe'),
            join(process.env[v], 'Chromium/Application/chrome.exe'),
            join(process.env[v], 'Microsoft/Edge/Application/msedge.exe'),
          ]
        : [],
    ),
  };
  const dirs = (process.env.PATH ?? '')
    .split(delimiter)
    .concat(process.platform === 'win32' ? [] : ['/usr/bin', '/usr/local/bin', '/snap/bin']);
  const candidates = [
    ...(fixed[process.platform] ?? []),
    ...dirs.flatMap((d) => NAMES.map((n) => join(d, process.platform === 'win32' ? `${n}.exe` : n))),
  ];
  return candidates.find(usable);
}

/** Launch flags: --no-sandbox only where the sandbox cannot work (root); the rest keep the browser off the network. */
export function browserArgs() {
  const root = process.getuid?.() === 0;
  return [
    ...(root ? ['--no-sandbox'] : []),
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--disable-dev-shm-usage',
  ];
}
