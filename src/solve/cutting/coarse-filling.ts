import type { Work } from '../work.js';
import { spend } from '../work.js';
import type { Filling, Goods, Target } from './knapsack.js';

/** Units that the room is divided into for the estimates. */
const units = 2000;

/** More steps than this (for each length) mean that the estimates do not lead anywhere. */
const mostSteps = 4000;

/**
 * Fills a room of very many units. First estimates on a coarse scale what the lengths from each one on are worth in
 * any room, never too low: lengths are rounded down. Then adds piece after piece, longest first, and leaves out
 * whatever the estimates say cannot beat the best filling met.
 */
export class CoarseFilling {
  /** Estimate for lengths i and on in so many units, i by i. */
  private estimate = new Float64Array(0);
  private goods: Goods = { lengths: [], demands: [], worth: [] };
  private unit = 1;
  private best = 0;
  private bestCounts: number[] | undefined;
  private counts: number[] = [];
  private steps = 0;

  /**
   * The best filling of the target, or undefined when none is worth more than its `over`; `exact` is false when the
   * search was given up, and the filling is only the best one met.
   */
  solve(
    goods: Goods,
    { room, over }: Target,
    work: Work,
  ): { readonly filling: Filling | undefined; readonly exact: boolean } {
    this.goods = goods;
    this.unit = room / units;
    this.estimateAll();
    this.best = over;
    this.bestCounts = undefined;
    this.counts = goods.lengths.map(() => 0);
    this.steps = mostSteps * goods.lengths.length;
    this.add(0, room, 0);
    spend(work, (units + mostSteps) * goods.lengths.length - this.steps);
    const counts = this.bestCounts;
    const filling = counts === undefined ? undefined : { value: this.best, counts };
    return { filling, exact: this.steps > 0 };
  }

  private estimateAll(): void {
    const { lengths, demands, worth } = this.goods;
    const width = units + 1;
    const size = (lengths.length + 1) * width;
    if (this.estimate.length < size) this.estimate = new Float64Array(size);
    const { estimate } = this;
    estimate.fill(0, lengths.length * width, size);
    for (let i = lengths.length - 1; i >= 0; i--) {
      const from = i * width;
      estimate.copyWithin(from, from + width, from + 2 * width);
      // A hair shorter, so that no quotient comes out too long.
      const length = Math.floor((lengths[i] as number) / this.unit - 1e-9);
      const more = worth[i] as number;
      if (more <= 0) continue;
      for (let count = 1; count <= (demands[i] as number) && count * length <= units; count++) {
        const [taken, value] = [count * length, count * more];
        for (let at = taken; at < width; at++) {
          const sum = (estimate[from + width + at - taken] as number) + value;
          if (sum > (estimate[from + at] as number)) estimate[from + at] = sum;
        }
      }
    }
  }

  /** The most that lengths i and on can add in a room, or somewhat more. */
  private hope(i: number, room: number): number {
    const left = Math.min(units, Math.floor(room / this.unit + 1e-9));
    return this.estimate[i * (units + 1) + left] as number;
  }

  /** Adds one piece of length `from` or shorter, in every way that may still beat the best. */
  private add(from: number, room: number, worth: number): void {
    const { lengths, demands, worth: each } = this.goods;
    if (worth > this.best) [this.best, this.bestCounts] = [worth, [...this.counts]];
    for (let i = from; i < lengths.length; i++) {
      if (--this.steps <= 0 || worth + this.hope(i, room) <= this.best) return;
      const left = room - (lengths[i] as number);
      const count = this.counts[i] as number;
      const more = each[i] as number;
      if (left < 0 || more <= 0 || count === demands[i]) continue;
      if (worth + more + this.hope(i, left) <= this.best) continue;
      this.counts[i] = count + 1;
      this.add(i, left, worth + more);
      this.counts[i] = count;
    }
  }
}
