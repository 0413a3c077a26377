import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { ROOT } from './bundled.mjs';
import { median } from './report.mjs';
import { untilText } from './terminal.mjs';

const HELLO = `import React from 'react';
import { render, Text } from 'ink';
render(React.createElement(Text, null, 'hello from ink'));
setInterval(() => {}, 1000);
`;

/** Process start to first frame, beside two hello-worlds built here: bare, and bundled like ours. */
export async function measure({ rounds }) {
  const { bare, packed } = await hellos();
  const home = mkdtempSync(join(tmpdir(), 'notchbook-home-'));
  const app = join(ROOT, 'src/start.mjs');
  const env = { HOME: home, NOTCHBOOK_HOME: home };
  await untilText([app], 'Notchbook', { env });
  const times = { bare: [], packed: [], app: [] };
  for (let round = 0; round < rounds; round += 1) {
    times.bare.push(await untilText([bare], 'hello from ink'));
    times.packed.push(await untilText([packed], 'hello from ink'));
    times.app.push(await untilText([app], 'Notchbook', { env }));
  }
  const [bareMs, packedMs, appMs] = [times.bare, times.packed, times.app].map(median);
  return [
    { what: 'home screen / unbundled hello', value: appMs / bareMs, unit: 'x', goal: 0.5 },
    { what: 'home screen / bundled hello', value: appMs / packedMs, unit: 'x', goal: 1.5 },
    { what: 'home screen', value: appMs, unit: 'ms' },
    { what: 'unbundled hello', value: bareMs, unit: 'ms' },
    { what: 'bundled hello', value: packedMs, unit: 'ms' },
  ];
}

async function hellos() {
  const folder = mkdtempSync(join(tmpdir(), 'notchbook-hello-'));
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  const bare = join(folder, 'bare.mjs');
  writeFileSync(bare, HELLO);
  const stub = join(folder, 'stub.mjs');
  writeFileSync(
    stub,
    'export default {}; export const connectToDevTools = () => {}; export const initialize = () => {};',
  );
  const packed = join(folder, 'out', 'packed.mjs');
  mkdirSync(join(folder, 'out'));
  await build({
    entryPoints: [bare],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    minify: true,
    legalComments: 'none',
    define: { 'process.env.NODE_ENV': '"production"' },
    alias: { 'react-devtools-core': stub, ws: stub },
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    outfile: packed,
    logLevel: 'error',
  });
  return { bare, packed };
}
