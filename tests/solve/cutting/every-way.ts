import type { CuttingProblem, Stock } from '../../../src/solve/cutting/problem.js';

/** Fewest missing pieces, and the least cost with so many missing. */
type Outcome = { readonly missing: number; readonly cost: number };

/**
 * Tries every way to cut a small problem: takes the longest piece still to be cut and puts it on every board, with
 * every choice of other pieces beside it. Shares no line with the program.
 */
export function everyWay(problem: CuttingProblem): Outcome {
  const lengths = problem.pieces.map(piece => piece.length);
  const known = new Map<string, Outcome>();
  const solve = (wanted: number[], left: number[]): Outcome => {
    const key = `${wanted} | ${left}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const open = wanted.map((count, i) => (count > 0 ? i : -1)).filter(i => i >= 0);
    if (open.length === 0) return { missing: 0, cost: 0 };
    const first = open.reduce((a, b) => ((lengths[b] ?? 0) > (lengths[a] ?? 0) ? b : a));
    const without = solve(minus(wanted, first), left);
    let best = { missing: without.missing + 1, cost: without.cost };
    problem.stock.forEach((stock, k) => {
      if ((left[k] ?? 0) <= 0) return;
      for (const rest of waysToFill(wanted, first, { lengths, stock, kerf: problem.kerf })) {
        const after = solve(rest, minus(left, k));
        best = better(best, { missing: after.missing, cost: after.cost + stock.cost });
      }
    });
    known.set(key, best);
    return best;
  };
  return solve(
    problem.pieces.map(piece => piece.count),
    problem.stock.map(stock => stock.available ?? 99),
  );
}

function better(a: Outcome, b: Outcome): Outcome {
  return b.missing < a.missing || (b.missing === a.missing && b.cost < a.cost) ? b : a;
}

function minus(counts: number[], place: number): number[] {
  return counts.map((count, i) => (i === place ? count - 1 : count));
}

type Board = { readonly lengths: number[]; readonly stock: Stock; readonly kerf: number };

/** What is still wanted after cutting piece `first` and any others from one board, for every choice of others. */
function waysToFill(wanted: number[], first: number, { lengths, stock, kerf }: Board): number[][] {
  const usable = stock.length - stock.trimStart - stock.trimEnd;
  const ways: number[][] = [];
  const choose = (from: number, rest: number[], used: number): void => {
    ways.push(rest);
    for (let i = from; i < lengths.length; i++) {
      const next = used + kerf + (lengths[i] ?? 0);
      if ((rest[i] ?? 0) > 0 && next <= usable) choose(i, minus(rest, i), next);
    }
  };
  const alone = lengths[first] ?? 0;
  if (alone <= usable) choose(0, minus(wanted, first), alone);
  return ways;
}
