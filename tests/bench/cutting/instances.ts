import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type {
  CuttingPlan,
  CuttingProblem,
  Piece,
  Stock,
} from '../../../src/solve/cutting/problem.js';

/** A bar without a price costs this much, so that the bound still has fractions of a bar to work with. */
const barPrice = 1000;

/** A published problem; `best` is the known least cost, or the two numbers it lies between. */
export type Instance = {
  readonly name: string;
  readonly problem: CuttingProblem;
  readonly best: readonly [number, number] | undefined;
};

/**
 * One instance a line, tab between: name, stock (`L` or `L@price*available`, comma between), best known total price
 * (`48`, `48..49` or `?`), how it is known, items (`length` or `lengthxcount`). Lines with # are comments.
 */
export function readInstances(text: string): Instance[] {
  return text
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(readInstance);
}

function readInstance(line: string): Instance {
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
  const best = bestText === '?' || low === undefined ? undefined : ([low, high ?? low] as const);
  return { name, problem: { pieces, stock, kerf: 0 }, best };
}

export type Run = { readonly ms: number; readonly plan: CuttingPlan; readonly faults: string[] };

/** Solves one instance, adds the plan up again, and holds it against what is known. */
export function solveInstance({ problem, best }: Instance, effort: number): Run {
  const from = performance.now();
  const plan = planCutting(problem, { effort });
  const ms = performance.now() - from;
  const faults = checkPlan(problem, plan);
  if (best !== undefined && plan.missing.length === 0) {
    const [low, high] = best;
    if (plan.lowerBound > high) faults.push(`bound ${plan.lowerBound} above the known ${high}`);
    if (plan.cost < low) faults.push(`cost ${plan.cost} below the known ${low}`);
  }
  return { ms, plan, faults };
}
