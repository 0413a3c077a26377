import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundled } from './bundled.mjs';
import { tableRow } from './table-row.mjs';

/**
 * Seconds that each instance of a class may take, and the share that has to be proven in them. `effort` is the
 * counted work it may take, about a second each: a unit of work on the longest boards takes half as long.
 */
const CLASSES = [
  { file: 'falkenauer-u', seconds: 10 },
  { file: 'falkenauer-t', seconds: 10 },
  { file: 'scholl-1', seconds: 10 },
  { file: 'schwerin-1', seconds: 10 },
  { file: 'schwerin-2', seconds: 10 },
  { file: 'waescher', seconds: 10 },
  { file: 'scholl-2', seconds: 60 },
  { file: 'scholl-3', seconds: 5, effort: 10 },
  { file: 'hard28', seconds: 60 },
  { file: 'vs-belov', seconds: 3, share: 0.95 },
];

/** One row for each published class in a folder; of each class `most` problems, spread over it. */
export async function classRows(folder, most) {
  const { readInstances, solveInstance } = await bundled('tests/bench/cutting/instances.ts');
  const { timed } = await bundled('tests/bench/cutting/cpu-time.ts');
  if (most < Infinity) {
    console.log(
      `SAMPLE ONLY: ${most} problems of each class, spread over it. --most is what limits it.`,
    );
  }
  const rows = [];
  for (const { file, seconds, effort = seconds, share = 1 } of CLASSES) {
    const path = join(folder, `${file}.txt`);
    if (!existsSync(path)) {
      rows.push(tableRow(`${file}: no such file in the folder`, '-', '-', false));
      continue;
    }
    const all = readInstances(readFileSync(path, 'utf8'));
    const every = Math.max(1, Math.ceil(all.length / most));
    const some = all.filter((_, at) => at % every === 0);
    if (some.length === 0) throw new Error(`${path} holds no problem`);
    const runs = some.map(one => timed(() => solveInstance(one, effort)));
    const faults = runs.flatMap(({ result }) => result.faults);
    if (faults.length > 0) throw new Error(`${file}: ${faults.slice(0, 3).join('; ')}`);
    const proven = runs.filter(
      ({ ms, result }) => result.plan.proof.kind !== 'none' && ms <= 1000 * seconds,
    ).length;
    const wanted = Math.ceil(share * some.length);
    const slowest = Math.max(...runs.map(({ ms }) => ms));
    rows.push(
      tableRow(
        `${file}: proven in ${seconds} s each`,
        `${wanted} of ${some.length}`,
        `${proven}; slowest ${(slowest / 1000).toFixed(1)} s`,
        proven >= wanted,
      ),
    );
  }
  return rows;
}
