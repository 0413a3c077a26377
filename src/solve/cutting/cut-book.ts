import type { ReducedProblem } from './normalize.js';

/** What is cut from a board, however long the board is. Two boards with the same cuts have the same `Cuts` object. */
export type Cuts = {
  readonly number: number;
  readonly counts: readonly number[];
  /** Reduced length of all pieces. */
  readonly load: number;
  /** Stop settings: different lengths. */
  readonly settings: number;
  /** Boards cut that way now. */
  boards: number;
  /** Ways found to share its pieces with other cuts, by the number of those and the kinds of both boards. */
  readonly splits: Map<number, readonly Split[]>;
  parts: readonly Part[] | undefined;
};

/** Some of the pieces of a board; `lengths` marks which lengths are among them. */
type Part = { readonly load: number; readonly lengths: number; readonly counts: readonly number[] };

/** Another way to share the pieces of two boards between them. */
export type Split = { readonly one: Cuts; readonly other: Cuts };

/** Cuts with more parts than this give away or take pieces of one length only. */
const mostParts = 60;
const mostSplits = 100;
/** Marks have to fit a whole number of 32 bits; lengths beyond share a mark, which passes over some splits. */
const marks = 31;

/**
 * Remembers all cuts met and how the pieces of any two boards can be shared otherwise, for the same pairs come up
 * again and again. Counts its steps.
 */
export class CutBook {
  steps = 0;
  private readonly known = new Map<string, Cuts>();

  constructor(private readonly problem: ReducedProblem) {}

  /** The cuts with so many of each length. */
  cuts(counts: readonly number[]): Cuts {
    this.steps += 10 + counts.length;
    const key = counts.join();
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const { lengths } = this.problem;
    const load = counts.reduce((sum, count, i) => sum + count * (lengths[i] as number), 0);
    const settings = counts.filter(count => count > 0).length;
    const number = this.known.size;
    const splits = new Map<number, readonly Split[]>();
    const cuts: Cuts = { number, counts, load, settings, boards: 0, splits, parts: undefined };
    this.known.set(key, cuts);
    return cuts;
  }

  /** Room left on a board of a kind after some cuts. */
  left(kind: number, cuts: Cuts): number {
    return (this.problem.kinds[kind]?.room ?? 0) - cuts.load;
  }

  /** Other ways to share the pieces of a board of kind `k` cut as `one` and a board of kind `l` cut as `other`. */
  splitsOf(k: number, one: Cuts, l: number, other: Cuts): readonly Split[] {
    const kinds = this.problem.kinds.length;
    const key = (other.number * kinds + k) * kinds + l;
    const known = one.splits.get(key);
    if (known !== undefined) return known;
    const found = this.findSplits(one, other, [this.left(k, one), this.left(l, other)]);
    one.splits.set(key, found);
    return found;
  }

  private findSplits(one: Cuts, other: Cuts, [leftOne, leftOther]: [number, number]): Split[] {
    const found: Split[] = [];
    const takes = this.partsOf(other);
    let from = 0;
    for (const give of this.partsOf(one)) {
      while (from < takes.length && (takes[from] as Part).load < give.load - leftOther) from++;
      for (let at = from; at < takes.length; at++) {
        const take = takes[at] as Part;
        if (take.load > give.load + leftOne || found.length >= mostSplits) break;
        this.steps++;
        const isChange = (give.lengths & take.lengths) === 0 && (give.lengths | take.lengths) !== 0;
        const gain = take.load - give.load;
        // Neither board may end up without a piece.
        if (!isChange || gain === -one.load || gain === other.load) continue;
        found.push({
          one: this.cuts(exchanged(one, give, take)),
          other: this.cuts(exchanged(other, take, give)),
        });
      }
    }
    this.steps += 20 + takes.length;
    return found;
  }

  /** Parts of some cuts, shortest first, nothing among them. */
  private partsOf(cuts: Cuts): readonly Part[] {
    if (cuts.parts !== undefined) return cuts.parts;
    const ways = cuts.counts.reduce((product, count) => product * (count + 1), 1);
    const counts = ways <= mostParts ? everyPart(cuts.counts) : handfuls(cuts.counts);
    const parts = counts
      .map(part => this.part(part))
      .sort((a, b) => a.load - b.load || a.lengths - b.lengths);
    this.steps += 10 * parts.length;
    cuts.parts = parts;
    return parts;
  }

  private part(counts: readonly number[]): Part {
    let load = 0;
    let lengths = 0;
    for (const [i, count] of counts.entries()) {
      if (count === 0) continue;
      load += count * (this.problem.lengths[i] as number);
      lengths |= 1 << (i % marks);
    }
    return { load, lengths, counts };
  }
}

function exchanged({ counts }: Cuts, give: Part, take: Part): number[] {
  return counts.map((count, i) => count - (give.counts[i] as number) + (take.counts[i] as number));
}

/** Every choice of none, some or all pieces of each length. */
function everyPart(counts: readonly number[]): number[][] {
  const parts = [counts.map(() => 0)];
  for (let i = counts.length - 1; i >= 0; i--) {
    const before = parts.length;
    for (let count = 1; count <= (counts[i] as number); count++) {
      for (let at = 0; at < before; at++) {
        const part = [...(parts[at] as number[])];
        part[i] = count;
        parts.push(part);
      }
    }
  }
  return parts;
}

/** Nothing, and some or all pieces of one length. */
function handfuls(counts: readonly number[]): number[][] {
  const parts = [counts.map(() => 0)];
  for (const [i, most] of counts.entries()) {
    for (let count = 1; count <= most; count++) {
      parts.push(counts.map((_, other) => (other === i ? count : 0)));
    }
  }
  return parts;
}
