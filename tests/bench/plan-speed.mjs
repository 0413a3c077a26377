import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundled, ROOT } from './bundled.mjs';
import { median, quantile } from './report.mjs';

/** An answer changes and the whole plan is made again, in one warm process. */
export async function measure({ rounds }) {
  const { planTimes } = await bundled('tests/bench/plan-speed.ts');
  const text = readFileSync(join(ROOT, 'projects/planter-bench/recipe.yaml'), 'utf8');
  const { cold, warm } = planTimes(text, Math.max(110, rounds * 10));
  return [
    { what: 'whole plan again, warm, median', value: median(warm), unit: 'ms', goal: 16 },
    { what: 'whole plan again, warm, 95 of 100', value: quantile(warm, 0.95), unit: 'ms' },
    { what: 'first plan of a process', value: cold, unit: 'ms' },
  ];
}
