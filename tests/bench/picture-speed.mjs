import { bundled, ROOT } from './bundled.mjs';

const SHOWN = 5;

/** Steps drawn for the first time in a warm process, the slowest of all sizes first. */
export async function measure({ rounds }) {
  const { pictureTimes } = await bundled('tests/bench/picture-speed.ts', {
    'import.meta.url': JSON.stringify(`file://${ROOT}tests/support/projects.ts`),
  });
  const slowest = [...pictureTimes(rounds)].sort((a, b) => b.ms - a.ms).slice(0, SHOWN);
  return slowest.map(({ what, ms }) => ({ what, value: ms, unit: 'ms', goal: 16 }));
}
