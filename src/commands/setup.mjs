// Run by npm before every command, on a fresh clone too: plain Node, no dependencies.
// Usage: node src/commands/setup.mjs [--browser]
// Everything it says goes to stderr, so that the output of a command stays clean.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { findBrowser } from './find-browser.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
process.chdir(root);

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19))
  fail(`Node.js must be 20.19 or newer, got ${process.versions.node} (https://nodejs.org has newer ones)`);

/** @param {string} message @returns {never} */
function fail(message) {
  console.error(`\n${message}\n`);
  process.exit(1);
}

/** Child output goes to stderr. @param {string} file @param {string[]} args @param {NodeJS.ProcessEnv} [env] */
function run(file, args, env = process.env) {
  console.error(`> ${[file === process.execPath ? 'node' : file, ...args].join(' ')}`);
  return spawnSync(file, args, { stdio: ['ignore', 2, 2], env, shell: file === 'npm' }).status === 0;
}

/** @param {string} path @returns {Record<string, {version?: string, optional?: boolean}> | undefined} */
function packagesOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/** True when node_modules holds what package-lock.json asks for. npm keeps its own record in node_modules. */
function dependenciesFresh() {
  const wanted = packagesOf('package-lock.json');
  const have = packagesOf(join('node_modules', '.package-lock.json'));
  if (!wanted || !have) return false;
  return Object.entries(wanted).every(
    ([path, p]) => path === '' || p.optional || (have[path]?.version === p.version && existsSync(path)),
  );
}

function ensureDependencies() {
  if (dependenciesFresh()) return;
  console.error('Installing dependencies (once, and after package-lock.json changed) ...');
  const npm = process.env.npm_execpath;
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const ok = npm ? run(process.execPath, [npm, ...args]) : run('npm', args);
  if (!ok) fail('npm ci failed: see its message above.');
}

/** A browser that Playwright installed earlier, if there is one. */
async function playwrightBrowser() {
  const { chromium } = await import(pathToFileURL(join(root, 'node_modules/playwright/index.mjs')).href);
  try {
    const path = chromium.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined;
  }
}

async function ensureBrowser() {
  let found;
  try {
    found = findBrowser() ?? (await playwrightBrowser());
  } catch (e) {
    fail(e instanceof Error ? e.message : String(e));
  }
  if (!found) {
    installWithApt();
    found = findBrowser();
  }
  if (!found) {
    run(process.execPath, ['node_modules/playwright/cli.js', 'install', '--only-shell', 'chromium']);
    found = await playwrightBrowser();
  }
  if (!found)
    fail(
      'No Chrome or Chromium found for the tests. Install one (Debian: apt-get install chromium-headless-shell), or set CHROME_PATH to its executable, and run the command again.',
    );
  console.error(`Browser for the tests: ${found}`);
}

function installWithApt() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  run('apt-get', ['update', '-q'], env);
  for (const name of ['chromium-headless-shell', 'chromium'])
    if (run('apt-get', ['install', '-yq', '--no-install-recommends', name], env) && findBrowser()) return;
}

ensureDependencies();
if (process.argv.includes('--browser')) await ensureBrowser();
