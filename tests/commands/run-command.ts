import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** The project's folder, in which commands run. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs one of `src/commands/` as `npm run` does. */
export function runCommand(name: string, args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src/commands/run.mjs', name, ...args], {
    cwd: root,
    input,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}
