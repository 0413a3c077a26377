import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
export const DIST = join(ROOT, 'dist');
export const APP = join(DIST, 'app.mjs');

/** What has to happen before any package loads, in every file of the bundle. */
const BANNER = [
  "import { createRequire as requireFrom } from 'node:module';",
  'const require = requireFrom(import.meta.url);',
  // Ink would look for developer tools that are not installed.
  'delete process.env.DEV;',
  // The color package knows FORCE_COLOR only, and Node warns where both are set.
  "if (process.env.NO_COLOR) { process.env.FORCE_COLOR = '0'; delete process.env.NO_COLOR; }",
  // The layout engine looks whether there is a fetch, and Node then loads one for 20 ms. Nothing here
  // ever asks the network.
  "Object.defineProperty(globalThis, 'fetch', { value: undefined, configurable: true });",
  // Ink paints nothing where these are set, though somebody may well sit at the terminal.
  'if (process.stdin.isTTY && process.stdout.isTTY) {',
  '  delete process.env.CI; delete process.env.CONTINUOUS_INTEGRATION;',
  '}',
].join('\n');

const WIDTH = join(ROOT, 'src/text/width.ts');

/** Styled plain text is measured at once too: the package takes 20 ms for its first line drawing. */
const FAST_WIDTH = `
  import { textWidth } from ${JSON.stringify(WIDTH)};
  export default text => textWidth(text.replace(/\\x1b\\[[\\d;]*m/g, ''));
`;

const standIns = {
  name: 'stand-ins',
  setup(build) {
    build.onResolve({ filter: /^(react-devtools-core|ws)$/ }, () => ({
      path: 'nothing',
      namespace: 'stand-in',
    }));
    build.onResolve({ filter: /^string-width$/ }, ({ importer }) =>
      importer === WIDTH ? undefined : { path: 'fast-width', namespace: 'stand-in' },
    );
    build.onLoad({ filter: /.*/, namespace: 'stand-in' }, ({ path }) => ({
      contents: path === 'nothing' ? 'export default {}' : FAST_WIDTH,
      resolveDir: ROOT,
    }));
  },
};

/** Bundles the program into dist/: one file that starts fast, and parts that are loaded when needed. */
export async function compile() {
  const startedAt = new Date();
  const { build } = await import('esbuild');
  const { outputFiles } = await build({
    entryPoints: { app: join(ROOT, 'src/main.tsx') },
    outdir: DIST,
    outExtension: { '.js': '.mjs' },
    chunkNames: 'part-[hash]',
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    jsx: 'automatic',
    minify: true,
    legalComments: 'none',
    define: {
      'process.env.NODE_ENV': '"production"',
      'process.env.NOTCHBOOK_VERSION': JSON.stringify(version()),
    },
    banner: { js: BANNER },
    plugins: [standIns],
    write: false,
    logLevel: 'silent',
  });
  mkdirSync(DIST, { recursive: true });
  // The entry comes last: a program that starts meanwhile finds all the parts it names.
  for (const file of [...outputFiles].sort(entryLast)) put(file);
  // As old as what was read: a source that changed meanwhile is newer.
  utimesSync(APP, startedAt, startedAt);
  forgetOldParts(outputFiles.map(({ path }) => basename(path)));
}

function version() {
  return JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')).version;
}

function entryLast(one, other) {
  return Number(one.path === APP) - Number(other.path === APP);
}

function put({ path, contents }) {
  const half = `${path}.${process.pid}.new`;
  writeFileSync(half, contents);
  renameSync(half, path);
}

const DAY_MS = 24 * 60 * 60_000;

/** Parts of a day ago: a program that is still running may yet load newer ones. */
function forgetOldParts(names) {
  for (const name of readdirSync(DIST)) {
    const path = join(DIST, name);
    const isOld = Date.now() - statSync(path).mtimeMs > DAY_MS;
    if (isOld && name.startsWith('part-') && !names.includes(name)) rmSync(path, { force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    await compile();
  } catch (error) {
    process.stderr.write(`Could not compile into ${DIST}:\n${error.message}\n`);
    process.exitCode = 1;
  }
}
