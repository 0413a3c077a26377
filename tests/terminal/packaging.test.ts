import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

const ROOT = new URL('../..', import.meta.url).pathname;

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'notchbook-'));
  mkdirSync(join(folder, 'src/text'), { recursive: true });
  mkdirSync(join(folder, 'projects'));
  for (const name of ['start.mjs', 'compile.mjs']) {
    cpSync(join(ROOT, 'src', name), join(folder, 'src', name));
  }
  cpSync(join(ROOT, 'package.json'), join(folder, 'package.json'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function start(...args: readonly string[]) {
  return spawnSync(process.execPath, [join(folder, 'src/start.mjs'), ...args], {
    encoding: 'utf8',
    cwd: '/',
  });
}

function program(text: string) {
  writeFileSync(join(folder, 'src/main.tsx'), text);
}

function withPackages() {
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
}

describe('starting from the sources', () => {
  test('compiles once, passes arguments on, and compiles again after a change', () => {
    withPackages();
    program('console.log("one", ...process.argv.slice(2));');
    expect(start('plan', 'planter-bench').stdout).toBe('one plan planter-bench\n');
    // Compiled later than the change it does not know of would be: kept as it is.
    const old = new Date(Date.now() - 60_000);
    program('console.log("two");');
    utimesSync(join(folder, 'src/main.tsx'), old, old);
    utimesSync(join(folder, 'src'), old, old);
    expect(start().stdout).toBe('one\n');
    program('console.log("three");');
    expect(start().stdout).toBe('three\n');
  });

  test('without its packages it says what to run', () => {
    program('console.log("one");');
    const { status, stderr } = start();
    expect(status).toBe(3);
    expect(stderr).toContain('Run "npm ci" in that folder first.');
    expect(stderr).not.toContain('    at ');
  });

  test('a source that does not compile is named with its line', () => {
    withPackages();
    program('\nconst = 3;');
    const { status, stderr } = start();
    expect(status).toBe(3);
    expect(stderr).toMatch(/main\.tsx:2:6/);
    expect(stderr).not.toContain('    at ');
  });

  test('a folder that can not be written to is told with what to do', () => {
    withPackages();
    program('console.log("one");');
    // A file where the folder should go stands for any refusal, for root too.
    writeFileSync(join(folder, 'dist'), '');
    const { status, stderr } = start();
    expect(status).toBe(3);
    expect(stderr).toContain(`Notchbook could not be made ready in ${folder}`);
    expect(stderr).not.toContain('    at ');
  });
});
