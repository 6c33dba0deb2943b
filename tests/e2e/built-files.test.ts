import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';

const folder = inject('builtFolder');
const scripts = readdirSync(join(folder, 'assets')).filter((name) => name.endsWith('.js'));

describe('the built files', () => {
  test.each(scripts)('%s is JavaScript that an engine parses (no decorators left over)', (name) => {
    // --check reads the file as its extension says; the package is of type module, but the folder lies outside of it.
    execFileSync(process.execPath, ['--input-type=module', '--check'], {
      input: readFileSync(join(folder, 'assets', name)),
    });
  });

  test('the page carries a content security policy that allows scripts from itself only', () => {
    const html = readFileSync(join(folder, 'index.html'), 'utf8');
    const policy =
      /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1]?.replaceAll('&#39;', "'") ?? '';
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/script-src[^;]*unsafe|https?:/);
  });

  test('nothing in the built page points at another host', () => {
    const html = readFileSync(join(folder, 'index.html'), 'utf8');
    expect(html).not.toMatch(/(?:src|href)="(?:https?:)?\/\//);
  });
});
