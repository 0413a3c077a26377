import type { Work } from '../work.js';
import type { Prices } from './bound.js';
import type { Aim } from './column-case.js';
import { budgetAbove, listPatterns } from './list-patterns.js';
import type { ReducedProblem } from './normalize.js';
import { type SearchResult, searchColumns } from './search-columns.js';

/**
 * Lists every full board that a plan of at most the target cost can contain, by prices that prove the bound within
 * the limits of the aim, and searches them. Undefined when there are more than `most` patterns.
 */
export function searchListed(
  problem: ReducedProblem,
  { prices, bound, most }: { prices: Prices; bound: number; most: number },
  aim: Aim,
  work: Work,
): SearchResult | undefined {
  const wanted = { budget: budgetAbove(bound, aim.target), onlyFull: true, most };
  const columns = listPatterns(problem, prices, wanted, work);
  return columns === undefined ? undefined : searchColumns(problem, columns, aim, work);
}
