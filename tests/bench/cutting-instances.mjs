import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundled } from './bundled.mjs';
import { quantile } from './report.mjs';

/**
 * Solves the published problems of a folder, one text file a class (the first `most` of each), and prints how many are
 * proven and how long it took, then each one that is not. `only` picks files by name. Returns how many plans were wrong.
 */
export async function measureFolder(folder, { effort, most, only }) {
  const { readInstances, solveInstance } = await bundled('tests/bench/cutting/instances.ts');
  const files = readdirSync(folder).filter(
    name => name.endsWith('.txt') && (!only || only.split(',').includes(name.slice(0, -4))),
  );
  let wrong = 0;
  console.log(
    'class                 proven          0.1 s   1 s  10 s   median ms     worst ms   gap %',
  );
  for (const file of files.sort()) {
    const instances = readInstances(readFileSync(join(folder, file), 'utf8')).slice(0, most);
    const runs = instances.map(one => ({ name: one.name, ...solveInstance(one, effort) }));
    console.log(classLine(file.slice(0, -4), runs));
    for (const { name, ms, plan, faults } of runs) {
      if (plan.proof.kind === 'none') {
        console.log(
          `    ${name}: between ${plan.lowerBound} and ${plan.cost}, ${ms.toFixed(0)} ms`,
        );
      }
      if (faults.length > 0) console.log(`    ${name} WRONG: ${faults.slice(0, 3).join('; ')}`);
    }
    wrong += runs.filter(({ faults }) => faults.length > 0).length;
  }
  return wrong;
}

function classLine(name, runs) {
  const proven = runs.filter(({ plan }) => plan.proof.kind !== 'none');
  const within = ms => String(proven.filter(run => run.ms <= ms).length).padStart(5);
  const times = runs.map(run => run.ms);
  const gaps = runs.map(({ plan }) => (plan.cost - plan.lowerBound) / Math.max(1, plan.cost));
  return [
    name.padEnd(20),
    `${proven.length} of ${runs.length}`.padEnd(14),
    `${within(100)} ${within(1000)} ${within(10_000)}`,
    quantile(times, 0.5).toFixed(1).padStart(11),
    Math.max(...times)
      .toFixed(1)
      .padStart(12),
    ((100 * gaps.reduce((sum, gap) => sum + gap, 0)) / Math.max(1, runs.length)).toFixed(4),
  ].join('  ');
}
