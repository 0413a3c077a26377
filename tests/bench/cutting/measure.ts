// Measures the search on the made-up workbook problems: node tests/bench/cutting/run.mjs measure.ts [FIRST] [LAST] [EFFORT]
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import { summary } from './summary.js';
import { workbookProblem } from './workbook-set.js';

const [, , first = '1', last = '300', effort = '1'] = process.argv;

// The first pass warms the program up; the second is the one to read.
for (const pass of ['cold', 'warm']) {
  const runs = [];
  for (let seed = Number(first); seed <= Number(last); seed++) {
    const problem = workbookProblem(seed);
    const start = performance.now();
    const plan = planCutting(problem, { effort: Number(effort) });
    const ms = performance.now() - start;
    const faults = checkPlan(problem, plan);
    if (faults.length > 0) console.log(`seed ${seed}`, faults.slice(0, 3));
    runs.push({ ms, plan });
  }
  console.log(pass, summary(runs));
}
