// Bundles a measuring script written in TypeScript and runs it: node tests/bench/cutting/run.mjs measure.ts [...]
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [script = 'measure.ts', ...rest] = process.argv.slice(2);
const folder = await mkdtemp(join(tmpdir(), 'cutting-'));
const outfile = join(folder, 'script.mjs');
try {
  await build({
    entryPoints: [fileURLToPath(new URL(script, import.meta.url))],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    sourcemap: 'inline',
    logLevel: 'error',
  });
  process.argv = [process.argv[0], script, ...rest];
  await import(pathToFileURL(outfile).href);
} finally {
  await rm(folder, { recursive: true, force: true });
}
