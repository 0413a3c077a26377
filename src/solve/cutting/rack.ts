import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';

/** One board and what is cut from it: how many of each length, the room left, and a number that equal cuts share. */
export type RackBoard = {
  readonly kind: number;
  readonly counts: readonly number[];
  readonly left: number;
  readonly cuts: number;
};

/** Some pieces of one length. */
export type Handful = { readonly i: number; readonly count: number };

/**
 * The boards of a plan one by one, kept while pieces are exchanged between them. Knows at any time how many stop
 * settings the plan needs: boards with the same cuts form a group, and a group needs one setting for each
 * different length in it.
 */
export class Rack {
  readonly boards: RackBoard[] = [];
  settings = 0;
  private readonly groups = new Map<number, number>();
  /** A number for each length, such that two different sets of cuts hardly ever add up to the same. */
  private readonly codes: readonly number[];

  constructor(
    private readonly problem: ReducedProblem,
    uses: readonly Use[],
  ) {
    let code = 20_011;
    this.codes = problem.lengths.map(() => {
      code = (code * 48_271) % 2_147_483_647;
      return code;
    });
    const excess = problem.demands.map((demand, i) => {
      const cut = uses.reduce(
        (sum, { pattern, times }) => sum + times * (pattern.counts[i] ?? 0),
        0,
      );
      return cut - demand;
    });
    // Pieces cut in excess are dropped from the boards with the fewest equals first.
    const order = [...uses].sort((a, b) => a.times - b.times);
    for (const { pattern, times } of order) {
      for (let board = 0; board < times; board++) {
        const counts = pattern.counts.map((count, i) => {
          const dropped = Math.min(count, excess[i] ?? 0);
          excess[i] = (excess[i] ?? 0) - dropped;
          return count - dropped;
        });
        if (counts.some(count => count > 0)) this.boards.push(this.board(pattern.kind, counts));
      }
    }
    for (const board of this.boards) this.settings += this.join(board);
  }

  /** The board after giving some pieces away and taking others; `left` is below 0 when they do not fit. */
  changed(board: RackBoard, give: Handful | undefined, take: Handful | undefined): RackBoard {
    const counts = [...board.counts];
    let { left, cuts } = board;
    const add = ({ i, count }: Handful, sign: number): void => {
      counts[i] = (counts[i] as number) + sign * count;
      left -= sign * count * (this.problem.lengths[i] as number);
      cuts += sign * count * (this.codes[i] as number);
    };
    if (give !== undefined) add(give, -1);
    if (take !== undefined) add(take, 1);
    return { kind: board.kind, counts, left, cuts };
  }

  /** The board with `sign` times so many pieces more, or undefined when it has not got or cannot hold them. */
  plus(board: RackBoard, more: readonly Handful[], sign: 1 | -1): RackBoard | undefined {
    let { left, cuts } = board;
    for (const { i, count } of more) {
      const change = sign * count;
      if ((board.counts[i] as number) + change < 0) return undefined;
      left -= change * (this.problem.lengths[i] as number);
      cuts += change * (this.codes[i] as number);
    }
    if (left < 0) return undefined;
    const counts = [...board.counts];
    for (const { i, count } of more) counts[i] = (counts[i] as number) + sign * count;
    return { kind: board.kind, counts, left, cuts };
  }

  /** True when some board has these cuts already. */
  isKnown({ cuts }: RackBoard): boolean {
    return this.groups.has(cuts);
  }

  /** Puts other boards in some places and returns how many settings that adds. */
  replace(places: readonly number[], boards: readonly RackBoard[]): number {
    const before = this.settings;
    for (const place of places) this.settings -= this.leave(this.boards[place] as RackBoard);
    for (const [at, place] of places.entries()) {
      const board = boards[at] as RackBoard;
      this.boards[place] = board;
      this.settings += this.join(board);
    }
    return this.settings - before;
  }

  /** The longest stretch left on any one board. */
  longestLeft(): number {
    return this.boards.reduce((most, board) => Math.max(most, board.left), 0);
  }

  /** The boards as patterns, equal ones together, those cut alike in a row. */
  uses(boards: readonly RackBoard[] = this.boards): Use[] {
    const alike = new Map<string, { pattern: RackBoard; times: number }>();
    const sorted = [...boards].sort((a, b) => compareCuts(a.counts, b.counts) || a.kind - b.kind);
    for (const board of sorted) {
      const key = `${board.kind}:${board.counts}`;
      const known = alike.get(key);
      if (known === undefined) alike.set(key, { pattern: board, times: 1 });
      else known.times += 1;
    }
    return [...alike.values()];
  }

  private board(kind: number, counts: readonly number[]): RackBoard {
    const { lengths, kinds } = this.problem;
    const load = counts.reduce((sum, count, i) => sum + count * (lengths[i] ?? 0), 0);
    const cuts = counts.reduce((sum, count, i) => sum + count * (this.codes[i] ?? 0), 0);
    return { kind, counts, left: (kinds[kind]?.room ?? 0) - load, cuts };
  }

  private join({ cuts, counts }: RackBoard): number {
    const times = this.groups.get(cuts) ?? 0;
    this.groups.set(cuts, times + 1);
    return times === 0 ? settingsOf(counts) : 0;
  }

  private leave({ cuts, counts }: RackBoard): number {
    const times = this.groups.get(cuts) ?? 0;
    if (times === 1) this.groups.delete(cuts);
    else this.groups.set(cuts, times - 1);
    return times === 1 ? settingsOf(counts) : 0;
  }
}

function settingsOf(counts: readonly number[]): number {
  let settings = 0;
  for (const count of counts) if (count > 0) settings++;
  return settings;
}

/** Longest pieces first, more of them first. */
function compareCuts(a: readonly number[], b: readonly number[]): number {
  for (const [i, count] of a.entries()) {
    const difference = (b[i] ?? 0) - count;
    if (difference !== 0) return difference;
  }
  return 0;
}
