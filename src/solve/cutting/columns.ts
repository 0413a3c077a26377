/** Patterns stored side by side, each as its board kind and the lengths it holds (only those it holds). */
export class Columns {
  readonly kind: number[] = [];
  readonly cost: number[] = [];
  /** Where each column begins in `piece` and `amount`; one entry more than there are columns. */
  readonly start: number[] = [0];
  readonly piece: number[] = [];
  readonly amount: number[] = [];

  get size(): number {
    return this.kind.length;
  }

  /** Adds a pattern and returns its number. */
  add(kind: number, cost: number, counts: ArrayLike<number>): number {
    for (let i = 0; i < counts.length; i++) {
      const count = counts[i] as number;
      if (count > 0) {
        this.piece.push(i);
        this.amount.push(count);
      }
    }
    this.kind.push(kind);
    this.cost.push(cost);
    this.start.push(this.piece.length);
    return this.kind.length - 1;
  }

  /** Adds a column that takes one piece of length `from` and gives one of length `to`, and returns its number. */
  addSwap(kind: number, from: number, to: number): number {
    this.piece.push(from, to);
    this.amount.push(-1, 1);
    this.kind.push(kind);
    this.cost.push(0);
    this.start.push(this.piece.length);
    return this.kind.length - 1;
  }

  /** How many of each of `lengths` lengths column j holds. */
  counts(j: number, lengths: number): number[] {
    const counts = new Array<number>(lengths).fill(0);
    for (let at = this.start[j] as number; at < (this.start[j + 1] as number); at++) {
      counts[this.piece[at] as number] = this.amount[at] as number;
    }
    return counts;
  }

  /** How many of length i column j holds. */
  amountOf(j: number, i: number): number {
    for (let at = this.start[j] as number; at < (this.start[j + 1] as number); at++) {
      if (this.piece[at] === i) return this.amount[at] as number;
    }
    return 0;
  }
}
