import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { ReferenceReporter } from './support/reference-reporter.js';

// biome-ignore lint/style/noDefaultExport: vitest reads its settings from the default export.
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.{ts,tsx}'],
    // Long enough for a machine that is busy with other work beside.
    testTimeout: 60_000,
    // Journeys in a terminal mostly wait: on a machine with two cores, three at a time.
    maxWorkers: Math.max(3, availableParallelism() - 1),
    // Modules hold nothing that a test changes: loading them once for all files takes 75 s off.
    isolate: false,
    // Some machines set these for continuous builds; Ink paints nothing then.
    env: { CI: '', CONTINUOUS_INTEGRATION: '' },
    reporters: ['default', new ReferenceReporter()],
  },
});
