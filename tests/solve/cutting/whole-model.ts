import type { CuttingProblem } from '../../../src/solve/cutting/problem.js';

/** One way to fill a stock entry: how many of each piece. */
type Way = { readonly stock: number; readonly counts: readonly number[] };

/**
 * Every way to fill every board that leaves no room for one more wanted piece, or undefined when there are more than
 * `most`. Lengths are checked as a person would: pieces, one cut between two, trim at the ends.
 */
export function everyFullBoard(problem: CuttingProblem, most: number): Way[] | undefined {
  const { pieces, kerf } = problem;
  const ways: Way[] = [];
  for (const [stock, board] of problem.stock.entries()) {
    const usable = board.length - board.trimStart - board.trimEnd;
    const fill = (i: number, counts: number[], used: number): void => {
      if (ways.length > most) return;
      const piece = pieces[i];
      if (piece === undefined) {
        const cut = counts.reduce((sum, count) => sum + count, 0);
        const fits = ({ length, count }: { length: number; count: number }, at: number): boolean =>
          (counts[at] ?? 0) < count && used + length + (cut > 0 ? kerf : 0) <= usable;
        if (cut > 0 && !pieces.some(fits)) ways.push({ stock, counts });
        return;
      }
      let total = used;
      for (let count = 0; count <= piece.count && total <= usable; count++) {
        fill(i + 1, [...counts, count], total);
        total += piece.length + (total > 0 ? kerf : 0);
      }
    };
    fill(0, [], 0);
  }
  return ways.length > most ? undefined : ways;
}

/** The purchase as a whole-number program in the LP text format: how many boards are cut each way. */
export function lpText(problem: CuttingProblem, ways: readonly Way[]): string {
  const sum = (terms: readonly (readonly [number, number])[]): string =>
    terms.map(([factor, way]) => `+ ${factor} w${way}`).join('\n ');
  const cost = ways.map(({ stock }, w) => [problem.stock[stock]?.cost ?? 0, w] as const);
  const demands = problem.pieces.map((piece, i) => {
    const cut = ways.map(({ counts }, w) => [counts[i] ?? 0, w] as const);
    return `p${i}: ${sum(cut.filter(([count]) => count > 0))} >= ${piece.count}`;
  });
  const limits = problem.stock.flatMap(({ available }, k) => {
    const uses = ways.flatMap((way, w) => (way.stock === k ? [[1, w] as const] : []));
    return available === undefined || uses.length === 0
      ? []
      : [`s${k}: ${sum(uses)} <= ${available}`];
  });
  const names = ways.map((_, w) => `w${w}`).join('\n ');
  return `Minimize\n obj: ${sum(cost)}\nSubject To\n${[...demands, ...limits].join('\n')}\nGeneral\n ${names}\nEnd\n`;
}
