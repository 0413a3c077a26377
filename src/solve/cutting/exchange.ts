import { CutBook, type Cuts } from './cut-book.js';
import { fixedNumbers } from './fixed-numbers.js';
import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import { settingsOf, withoutExcess } from './settings.js';

/** Steps for each board, and at most: about two milliseconds on one core at full speed. */
const stepsForBoard = 2000;
const mostSteps = 60_000;
/** Steps that one try counts as. */
const stepsForTry = 5;

/** What comes first when cost and boards are settled: few stop settings, or one long offcut. */
export type WishOrder = 'settings' | 'offcut';

/**
 * Exchanges pieces between the boards of a plan, which stay the same boards, so that the saw needs fewer stop
 * settings and one offcut becomes as long as possible, whichever comes first in the order. Losses are accepted ever
 * more rarely (simulated annealing, after S. Kirkpatrick, C.D. Gelatt and M.P. Vecchi, Science 220, 1983); the best
 * arrangement met is returned. Best found, not best possible.
 */
export function exchangePieces(
  problem: ReducedProblem,
  uses: readonly Use[],
  first: WishOrder = 'settings',
): Use[] {
  const whole = withoutExcess(problem, uses);
  const isMissing = ({ pattern }: Use): boolean => problem.kinds[pattern.kind]?.single ?? false;
  const missing = whole.filter(isMissing);
  const exchange = new Exchange(
    problem,
    whole.filter(use => !isMissing(use)),
    first,
  );
  exchange.run();
  return [...exchange.best.uses, ...missing].sort(
    (a, b) => compareCuts(a.pattern.counts, b.pattern.counts) || a.pattern.kind - b.pattern.kind,
  );
}

/** Some boards of one kind with the same cuts. */
type Group = { readonly kind: number; readonly cuts: Cuts; times: number };

/** So many boards of two groups get other cuts. */
type Change = {
  readonly groups: readonly [Group, Group];
  readonly to: readonly [Cuts, Cuts];
  readonly times: number;
};

type Arrangement = {
  readonly settings: number;
  readonly left: number;
  readonly uses: readonly Use[];
};

class Exchange {
  best: Arrangement;
  private readonly book: CutBook;
  private readonly random = fixedNumbers(20_011);
  private groups: Group[] = [];
  private settings: number;

  constructor(
    private readonly problem: ReducedProblem,
    uses: readonly Use[],
    private readonly first: WishOrder,
  ) {
    this.book = new CutBook(problem);
    this.settings = settingsOf(uses);
    for (const { pattern, times } of uses) {
      const cuts = this.book.cuts(pattern.counts);
      cuts.boards += times;
      this.add(pattern.kind, cuts, times);
    }
    this.best = this.arrangement();
  }

  run(): void {
    const boards = this.groups.reduce((sum, { times }) => sum + times, 0);
    const limit = Math.min(mostSteps, stepsForBoard * boards);
    let tries = 0;
    const done = (): number => (this.book.steps + stepsForTry * tries) / limit;
    for (let share = done(); share < 1 && boards > 1; share = done()) {
      tries++;
      // One setting for each length is the least there can be; what is left to gain then is found soon.
      if (this.best.settings === this.problem.lengths.length && share > 0.2) return;
      const change = this.propose();
      if (change === undefined) continue;
      const more = this.count(change, 1);
      if (this.refuses({ more, gain: this.gatheredBy(change), patience: 1 - share })) {
        this.count(change, -1);
      } else this.carryOut(change, more);
    }
  }

  /** Another way to share the pieces of two boards, for one such pair or for as many as there are. */
  private propose(): Change | undefined {
    const { groups, random } = this;
    const one = groups[random(groups.length)] as Group;
    const other = groups[random(groups.length)] as Group;
    const pairs = one === other ? Math.floor(one.times / 2) : Math.min(one.times, other.times);
    if (pairs === 0) return undefined;
    const splits = this.book.splitsOf(one.kind, one.cuts, other.kind, other.cuts);
    const split = splits[random(Math.max(1, splits.length))];
    if (split === undefined) return undefined;
    const times = random(3) === 0 ? 1 : pairs;
    return { groups: [one, other], to: [split.one, split.other], times };
  }

  /** Counts boards as after the change (`sign` 1) or as before it (-1); returns how many settings that adds. */
  private count({ groups, to, times }: Change, sign: 1 | -1): number {
    const boards = sign * times;
    const [one, other] = groups;
    return (
      counted(to[0], boards) +
      counted(to[1], boards) +
      counted(one.cuts, -boards) +
      counted(other.cuts, -boards)
    );
  }

  /** Above 0 when what is left gathers on fewer boards. */
  private gatheredBy({ groups: [one, other], to }: Change): number {
    const square = (kind: number, cuts: Cuts): number => this.book.left(kind, cuts) ** 2;
    const before = square(one.kind, one.cuts) + square(other.kind, other.cuts);
    return square(one.kind, to[0]) + square(other.kind, to[1]) - before;
  }

  private refuses({ more, gain, patience }: { more: number; gain: number; patience: number }) {
    const { random } = this;
    if (this.first === 'offcut') {
      return gain < 0 ? random(1000) > 300 * patience : gain === 0 && more > 0;
    }
    if (more > 0) return more > 3 || random(1000) * more * more >= 300 * patience;
    return more === 0 && gain < 0 && random(4) > 0;
  }

  private carryOut({ groups, to, times }: Change, more: number): void {
    this.settings += more;
    for (const [at, group] of groups.entries()) {
      group.times -= times;
      this.add(group.kind, to[at] as Cuts, times);
    }
    if (groups.some(group => group.times === 0)) {
      this.groups = this.groups.filter(group => group.times > 0);
    }
    if (this.isBest()) this.best = this.arrangement();
  }

  private isBest(): boolean {
    const fewer = this.best.settings - this.settings;
    if (this.first === 'settings' && fewer < 0) return false;
    const longer = this.longestLeft() - this.best.left;
    if (this.first === 'settings') return fewer > 0 || longer > 0;
    return longer > 0 || (longer === 0 && fewer > 0);
  }

  private add(kind: number, cuts: Cuts, times: number): void {
    const known = this.groups.find(group => group.kind === kind && group.cuts === cuts);
    if (known === undefined) this.groups.push({ kind, cuts, times });
    else known.times += times;
  }

  private arrangement(): Arrangement {
    const uses = this.groups.map(({ kind, cuts, times }) => ({
      pattern: { kind, counts: cuts.counts },
      times,
    }));
    return { settings: this.settings, left: this.longestLeft(), uses };
  }

  private longestLeft(): number {
    return this.groups.reduce(
      (most, { kind, cuts }) => Math.max(most, this.book.left(kind, cuts)),
      0,
    );
  }
}

/** Counts so many boards more (or fewer) with these cuts and returns how many settings that adds. */
function counted(cuts: Cuts, more: number): number {
  const before = cuts.boards;
  cuts.boards += more;
  if (before === 0) return more === 0 ? 0 : cuts.settings;
  return cuts.boards === 0 ? -cuts.settings : 0;
}

/** Longest pieces first, more of them first. */
function compareCuts(a: readonly number[], b: readonly number[]): number {
  for (const [i, count] of a.entries()) {
    const difference = (b[i] ?? 0) - count;
    if (difference !== 0) return difference;
  }
  return 0;
}
