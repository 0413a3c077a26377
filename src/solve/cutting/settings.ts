import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';

/** Stop settings of a plan: one for each different length on each group of boards cut alike. */
export function settingsOf(uses: readonly Use[]): number {
  const groups = new Map(uses.map(({ pattern: { counts } }) => [counts.join(), counts]));
  return [...groups.values()].reduce(
    (sum, counts) => sum + counts.filter(count => count > 0).length,
    0,
  );
}

/** The plan without pieces cut in excess, which are dropped from the boards with the fewest equals first. */
export function withoutExcess(problem: ReducedProblem, uses: readonly Use[]): Use[] {
  const excess = problem.demands.map((demand, i) => {
    const cut = uses.reduce((sum, { pattern, times }) => sum + times * (pattern.counts[i] ?? 0), 0);
    return cut - demand;
  });
  const boards: Use[] = [];
  for (const { pattern, times } of [...uses].sort((a, b) => a.times - b.times)) {
    if (pattern.counts.every((count, i) => count === 0 || (excess[i] ?? 0) === 0)) {
      boards.push({ pattern, times });
      continue;
    }
    for (let board = 0; board < times; board++) {
      const counts = pattern.counts.map((count, i) => {
        const dropped = Math.min(count, excess[i] ?? 0);
        excess[i] = (excess[i] ?? 0) - dropped;
        return count - dropped;
      });
      const isEmpty = counts.every(count => count === 0);
      if (!isEmpty) boards.push({ pattern: { kind: pattern.kind, counts }, times: 1 });
    }
  }
  return boards;
}
