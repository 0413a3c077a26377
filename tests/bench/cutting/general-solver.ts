import { findCheapest } from '../../../src/solve/cutting/find-cheapest.js';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import { everyFullBoard, lpText } from '../../solve/cutting/whole-model.js';
import { arcFlowText } from './arc-flow.js';
import { timed } from './cpu-time.js';
import { workbookProblem } from './workbook-set.js';

/** The subset of the workbook set that is solved both ways: start numbers 1 to 15. */
const SEEDS = Array.from({ length: 15 }, (_, at) => at + 1);
/** More ways to fill the boards than this are not listed for the other solver. */
const mostWays = 150_000;

/** What a general solver answers; it compares values, never verdicts. */
export type Solve = (lp: string) => { readonly Status: string; readonly ObjectiveValue: number };

/** The solver's processor time against ours to the proven least cost, one ratio a problem; stopped runs as they were. */
export type Ratios = {
  readonly ways: readonly number[];
  readonly arcFlow: readonly number[];
  readonly faults: readonly string[];
};

/** Solves the subset with our own search and with a general solver, one after the other in this process. */
export function ratios(solve: Solve): Ratios {
  const [ways, arcFlow, faults]: [number[], number[], string[]] = [[], [], []];
  for (const seed of SEEDS) {
    const problem = workbookProblem(seed);
    const own = timed(() => findCheapest(normalize(problem), { done: 0, limit: 200_000_000 }));
    const hold = (text: string, into: number[]): void => {
      const { ms, result } = timed(() => solve(text));
      into.push(ms / own.ms);
      const isWorse = Math.round(result.ObjectiveValue) !== own.result.cost;
      if (result.Status === 'Optimal' && isWorse) {
        faults.push(`start number ${seed}: ${result.ObjectiveValue}, ours ${own.result.cost}`);
      }
    };
    const listed = everyFullBoard(problem, mostWays);
    if (listed !== undefined) hold(lpText(problem, listed), ways);
    hold(arcFlowText(problem), arcFlow);
  }
  return { ways, arcFlow, faults };
}
