// Measures the search on published instances: node tests/bench/cutting/run.mjs instances.ts FILE [EFFORT] [MOST]
// One instance a line, tab between: name, stock (`L` or `L@price*available`, comma between), best known total price,
// how it is known, items (`length` or `lengthxcount`). Lines with # are comments. Prints proven counts and times.
import { readFileSync } from 'node:fs';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { CuttingProblem, Piece, Stock } from '../../../src/solve/cutting/problem.js';
import { summary } from './summary.js';

const [, , file = '', effort = '1', most = '1000000'] = process.argv;

/** A bar without a price costs this much, so that the bound still has fractions of a bar to work with. */
const barPrice = 1000;

type Instance = { name: string; problem: CuttingProblem; best: [number, number] | undefined };

function read(line: string): Instance {
  const [name = '', stockText = '', bestText = '', , items = ''] = line.split('\t');
  const plain = !stockText.includes('@');
  const stock = stockText.split(',').map((text, place): Stock => {
    const [, length = 0, price, available] = /^(\d+)(?:@(\d+))?(?:\*(\d+))?$/.exec(text) ?? [];
    return {
      id: `stock ${place + 1}`,
      length: Number(length),
      cost: price === undefined ? barPrice : Number(price),
      trimStart: 0,
      trimEnd: 0,
      ...(available === undefined ? {} : { available: Number(available) }),
    };
  });
  const pieces = items.split(' ').map((text, place): Piece => {
    const [length, count = 1] = text.split('x').map(Number);
    return { id: `piece ${place + 1}`, length: length ?? 0, count };
  });
  const [low, high = low] = bestText.split('..').map(cost => Number(cost) * (plain ? barPrice : 1));
  const best =
    bestText === '?' || low === undefined ? undefined : ([low, high ?? low] as [number, number]);
  return { name, problem: { pieces, stock, kerf: 0 }, best };
}

const lines = readFileSync(file, 'utf8')
  .split('\n')
  .filter(line => line !== '' && !line.startsWith('#'));
const runs = lines.slice(0, Number(most)).map(line => {
  const { name, problem, best } = read(line);
  const start = performance.now();
  const plan = planCutting(problem, { effort: Number(effort) });
  const ms = performance.now() - start;
  const faults = checkPlan(problem, plan);
  if (best !== undefined && plan.missing.length === 0) {
    if (plan.lowerBound > best[1])
      faults.push(`bound ${plan.lowerBound} above the known ${best[1]}`);
    if (plan.cost < best[0]) faults.push(`cost ${plan.cost} below the known ${best[0]}`);
  }
  if (faults.length > 0) console.log(name, faults.slice(0, 3));
  if (process.env.ALL)
    console.log(
      name,
      plan.cost,
      plan.lowerBound,
      JSON.stringify(plan.proof),
      ms.toFixed(0),
      plan.work,
    );
  return { ms, plan };
});
console.log(file.split('/').at(-1), summary(runs));
