// Kills the real program again and again in the middle of a build and counts what was lost.
// npm run soak -- --kills 1000 [--seed N]
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const ROOT = new URL('../..', import.meta.url).pathname;
const outfile = join(ROOT, 'dist', 'soak.mjs');

/** Each file goes on knowing where it lies, as the tests' support needs. */
const ownPlace = {
  name: 'own-place',
  setup({ onLoad }) {
    onLoad({ filter: /\.tsx?$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8').replaceAll(
        'import.meta.url',
        JSON.stringify(pathToFileURL(path).href),
      ),
      loader: path.endsWith('x') ? 'tsx' : 'ts',
    }));
  },
};

await build({
  entryPoints: [join(ROOT, 'tests/soak/soak.ts')],
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  outfile,
  plugins: [ownPlace],
  logLevel: 'error',
});
await import(pathToFileURL(outfile).href);
