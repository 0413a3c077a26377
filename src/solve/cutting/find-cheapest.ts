import { isSpent, type Work } from '../work.js';
import { partsPerCent } from './bound.js';
import { type Relaxation, relax } from './column-generation.js';
import { nextCost, stockLimits } from './count-limits.js';
import { dive, divesInARow } from './dive.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { climb, type LadderEnd } from './ladder.js';
import type { ReducedProblem } from './normalize.js';
import { hasRest, type RestSolver, searchRest } from './search-rest.js';
import { searchWhole } from './search-whole.js';

/** A plan, how far it is proven, and the relaxation whose prices the proof begins with. */
export type Cheapest = LadderEnd & { readonly relaxation: Relaxation };

/** So many dives at most; those after the first few follow a search that ended without a proof. */
const mostDives = 21 * divesInARow;

/** With boards of several prices and no more lengths than this, searching is quicker than diving. */
const fewLengths = 40;

/**
 * Fills boards longest first, solves the relaxed problem, follows it down to a plan, and searches whatever lies
 * between that plan and the bound. There is always a plan, however early the work limit comes.
 */
export function findCheapest(problem: ReducedProblem, work: Work): Cheapest {
  const isLarge = problem.kinds.length === 1 && hasRest(problem);
  return begin(problem, work, isLarge ? settleByRests : settle);
}

/** What lies between a plan and the bound, searched as far as the work limit allows. */
type Settle = (
  problem: ReducedProblem,
  relaxation: Relaxation,
  known: LadderEnd,
  work: Work,
) => LadderEnd;

function begin(problem: ReducedProblem, work: Work, settleRest: Settle): Cheapest {
  const first = fillGreedily(problem, wholeProblem(problem));
  const relaxation = relax(problem, first, work);
  const least = nextCost(problem, stockLimits(problem), Math.ceil(relaxation.bound / partsPerCent));
  const cost = costOf(problem, first);
  const known = { uses: first, cost, lowerBound: Math.min(cost, least), cases: 0 };
  const end = settleRest(problem, relaxation, known, work);
  // A plan at the first bound needs no search to be proven, however it was found.
  const cases = end.cost <= least ? 0 : end.cases;
  return { ...end, cases, relaxation };
}

/** Dives, searches, and dives again. */
function settle(
  problem: ReducedProblem,
  relaxation: Relaxation,
  known: LadderEnd,
  work: Work,
): LadderEnd {
  const isQuick = problem.kinds.length > 1 && problem.lengths.length <= fewLengths;
  let dives = isQuick ? 1 : divesInARow;
  let end = diveFrom(problem, relaxation, { known, from: 0, cursory: isQuick }, work);
  end = climb(problem, relaxation, end, work);
  // What search leaves open, another dive may close.
  for (; dives < mostDives && end.cost > end.lowerBound && !isSpent(work); dives += divesInARow) {
    end = diveFrom(problem, relaxation, { known: end, from: dives }, work);
  }
  return end;
}

function diveFrom(
  problem: ReducedProblem,
  relaxation: Relaxation,
  { known, from, cursory = false }: { known: LadderEnd; from: number; cursory?: boolean },
  work: Work,
): LadderEnd {
  const aim = { known: known.uses, floor: known.lowerBound, from, cursory };
  const uses = dive(problem, relaxation, aim, work);
  return { ...known, uses, cost: costOf(problem, uses) };
}

/** Turns of following the relaxed solution to a rest before the search of the whole, and its part of the steps left. */
const turnsInARow = 6;
const shareForSearch = 0.5;

/** For many pieces and one kind of board: searches rests of the relaxed solution, and the whole now and then. */
function settleByRests(
  problem: ReducedProblem,
  relaxation: Relaxation,
  known: LadderEnd,
  work: Work,
): LadderEnd {
  const solve: RestSolver = (rest, share) => begin(rest, share, settle);
  let end = known;
  for (let turn = 0; end.cost > end.lowerBound && !isSpent(work); turn++) {
    const aim = { target: end.lowerBound, turn, solve };
    const uses = searchRest(problem, relaxation, aim, work);
    const cost = uses === undefined ? Infinity : costOf(problem, uses);
    if (uses !== undefined && cost < end.cost) end = { ...end, uses, cost };
    if (turn % turnsInARow < turnsInARow - 1 || end.cost === end.lowerBound) continue;
    end = diveFrom(problem, relaxation, { known: end, from: turn }, work);
    const share = { done: 0, limit: (work.limit - work.done) * shareForSearch };
    end = searchWhole(problem, relaxation, end, share);
    work.done += share.done;
  }
  return end;
}
