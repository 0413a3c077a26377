import { type ChildProcessByStdio, spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { build } from 'esbuild';
import { afterAll, beforeAll } from 'vitest';

export type Child = {
  readonly process: ChildProcessByStdio<Writable, Readable, null>;
  /** The next line it says; none when it has ended. */
  readonly line: () => Promise<string | undefined>;
  /** Ends it at once, as a power switch would; resolves with all lines it had still said. */
  readonly kill: () => Promise<readonly string[]>;
};

/** An empty folder for the tests of one file, gone afterwards. */
export function scratchFolder(): { readonly path: string } {
  const scratch = { path: '' };
  beforeAll(() => {
    scratch.path = mkdtempSync(join(tmpdir(), 'notchbook-test-'));
    chmodSync(scratch.path, 0o777);
  });
  afterAll(() => rmSync(scratch.path, { recursive: true, force: true }));
  return scratch;
}

/** Compiles `child.ts` into one file for this machine's node. */
export async function compileChild(folder: string): Promise<string> {
  const outfile = join(folder, 'child.mjs');
  await build({
    entryPoints: [new URL('child.ts', import.meta.url).pathname],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // Parts of conf are CommonJS and ask for node's own modules by `require`.
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    logLevel: 'error',
  });
  return outfile;
}

/** Starts it with a task. `uid` makes it somebody else, where the tests run as root. */
export function startChild(
  file: string,
  args: readonly string[],
  options: { readonly uid?: number } = {},
): Child {
  const child = spawn(process.execPath, [file, ...args], {
    stdio: ['pipe', 'pipe', 'inherit'],
    ...options,
  });
  // A child that is killed closes its end first.
  child.stdin.on('error', () => {});
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const line = async () => {
    const next = await lines.next();
    return next.done === true ? undefined : next.value;
  };
  return { process: child, line, kill: () => killed(child, line) };
}

async function killed(child: Child['process'], line: Child['line']): Promise<readonly string[]> {
  // Its output closes a moment before the system lets it go; the lock is free only then.
  const running = child.exitCode === null && child.signalCode === null;
  const gone = running ? once(child, 'exit') : Promise.resolve();
  child.kill('SIGKILL');
  const said: string[] = [];
  for (let next = await line(); next !== undefined; next = await line()) said.push(next);
  await gone;
  return said;
}
