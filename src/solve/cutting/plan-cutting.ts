import { assemble } from './assemble.js';
import { partsPerCent } from './bound.js';
import type { Relaxation } from './column-generation.js';
import { relax } from './column-generation.js';
import { dive } from './dive.js';
import { exchangePieces } from './exchange.js';
import { fewerBoards } from './fewer-boards.js';
import type { Use } from './greedy.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import type { LadderEnd } from './ladder.js';
import { climb } from './ladder.js';
import type { ReducedProblem } from './normalize.js';
import { normalize } from './normalize.js';
import { nextPriceSum } from './price-sums.js';
import type { CuttingPlan, CuttingProblem, Proof } from './problem.js';
import type { Work } from './work.js';

/** Steps that an effort of 1 allows. */
const stepsForEffort = 80_000_000;

/**
 * Finds which boards to take and how to cut them at the least cost. Lengths in whole units, costs in cents.
 * `effort` 1 is the usual work limit; 0 still gives a plan. Throws a RangeError on numbers that are not whole.
 * Three 1000 mm pieces with a 3 mm blade need 3006 mm, so from 3000 mm boards two are taken.
 */
export function planCutting(
  problem: CuttingProblem,
  options: { effort?: number } = {},
): CuttingPlan {
  const work: Work = { done: 0, limit: stepsForEffort * (options.effort ?? 1) };
  const reduced = normalize(problem);
  const first = fillGreedily(reduced, wholeProblem(reduced));
  const relaxation = relax(reduced, first, work);
  const dived = dive(reduced, relaxation, work);
  const start = beginWith(
    reduced,
    relaxation,
    costOf(reduced, dived) < costOf(reduced, first) ? dived : first,
  );
  const end = climb(reduced, relaxation, start, work);
  const uses = exchangePieces(reduced, fewerBoards(reduced, relaxation, end.uses, wishes(work)));
  const { boards, missing } = assemble(problem, reduced, uses);
  return {
    ...money(reduced, end),
    boards,
    missing,
    work: work.done,
    duals: dualsById(reduced, relaxation),
  };
}

/** The wishes that come after the cost get a small share of the steps, whatever the cost took. */
function wishes({ limit }: Work): Work {
  return { done: 0, limit: limit / 100 };
}

function beginWith(
  problem: ReducedProblem,
  { bound }: Relaxation,
  uses: readonly Use[],
): LadderEnd {
  const prices = problem.kinds.map(({ cost, available }) => ({ cost, least: 0, most: available }));
  const cost = costOf(problem, uses);
  const lowerBound = Math.min(cost, nextPriceSum(Math.ceil(bound / partsPerCent), prices));
  return { uses, cost, lowerBound, cases: 0 };
}

function money(
  problem: ReducedProblem,
  { uses, cost, lowerBound, cases }: LadderEnd,
): { cost: number; lowerBound: number; proof: Proof } {
  const deterrent = costOf(
    problem,
    uses.filter(({ pattern }) => problem.kinds[pattern.kind]?.single),
  );
  const real = cost - deterrent;
  const gap = cost - lowerBound;
  if (gap > 0)
    return {
      cost: real,
      lowerBound: Math.max(0, real - gap),
      proof: { kind: 'none', gap: Math.min(gap, real) },
    };
  return {
    cost: real,
    lowerBound: real,
    proof: cases === 0 ? { kind: 'bound' } : { kind: 'search', cases },
  };
}

function dualsById(problem: ReducedProblem, { prices }: Relaxation): Map<string, number> {
  return new Map(
    problem.pieces.flatMap((pieces, i) =>
      pieces.map(({ id }) => [id, prices.worth[i] ?? 0] as const),
    ),
  );
}
