import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export const ROOT = new URL('../..', import.meta.url).pathname;

/** A TypeScript file of the project as a module that Node can load; `define` replaces expressions in it. */
export async function bundled(path, define = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'notchbook-bench-'));
  const outfile = join(folder, 'part.mjs');
  await build({
    entryPoints: [join(ROOT, path)],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    define,
    outfile,
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    logLevel: 'error',
  });
  return import(pathToFileURL(outfile).href);
}
