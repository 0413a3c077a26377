import type { Work } from '../work.js';
import { spend } from '../work.js';
import { allowance, type Prices, partsPerCent } from './bound.js';
import { CoarseFilling } from './coarse-filling.js';
import type { Columns } from './columns.js';
import { type Filling, type Goods, Knapsack } from './knapsack.js';
import type { ReducedProblem } from './normalize.js';
import { RoomTable, suitsTable } from './room-table.js';

/** So many boards at most are filled in a row, each from what those before it leave. */
const mostInARow = 20;

/** Of no more lengths than this, a list of fillings is short, however fine the unit. */
const fewLengths = 25;

/** The most that pieces on one board of each kind are worth (undefined: no more than allowed). */
export type MostWorth = readonly (number | undefined)[];

/** Makes the columns that are worth more than they cost, at prices that change from round to round. */
export class ColumnMaker {
  private readonly knapsack = new Knapsack();
  private readonly table = new RoomTable();
  private readonly coarse = new CoarseFilling();

  constructor(
    private readonly problem: ReducedProblem,
    private readonly columns: Columns,
  ) {}

  /**
   * Adds fillings that are worth more than their board costs, of every kind the best one, and returns what the best
   * ones are worth.
   */
  add(prices: Prices, work: Work): MostWorth {
    const { lengths, demands, kinds } = this.problem;
    if (kinds.length > 1) return this.addEach(prices, work);
    const room = kinds[0]?.room ?? 0;
    const goods = { lengths, demands, worth: prices.worth };
    const over = allowance(this.problem, prices, 0);
    const fillTable = (some: Goods) => this.table.solve(some, { room, over }, work);
    if (suitsTable(goods, room)) return [this.addInARow(prices, goods, fillTable)?.value];
    const fillListing = (some: Goods) => this.knapsack.solve(some, [{ room, over }], work)[0];
    if (lengths.length <= fewLengths) return [this.addInARow(prices, goods, fillListing)?.value];
    const fillLarge = (some: Goods) => {
      const { filling, exact } = this.coarse.solve(some, { room, over }, work);
      return exact ? filling : fillListing(some);
    };
    return [this.addInARow(prices, goods, fillLarge)?.value];
  }

  private addEach(prices: Prices, work: Work): MostWorth {
    const { problem } = this;
    const real = problem.kinds.filter(kind => !kind.single);
    const targets = real.map(({ room }, k) => ({ room, over: allowance(problem, prices, k) }));
    const goods = { lengths: problem.lengths, demands: problem.demands, worth: prices.worth };
    const fillings = this.knapsack.solve(goods, targets, work);
    spend(work, 10 * fillings.length);
    fillings.forEach((filling, k) => {
      this.keep(filling, k, prices);
    });
    return fillings.map(filling => filling?.value);
  }

  /**
   * Fills boards of one kind one after the other, each from the pieces that are left, so that the columns of one
   * round go well together. Returns the first filling.
   */
  private addInARow(
    prices: Prices,
    goods: Goods,
    fill: (goods: Goods) => Filling | undefined,
  ): Filling | undefined {
    const left = [...goods.demands];
    const first = fill(goods);
    let filling = first;
    for (let row = 1; this.keep(filling, 0, prices) && row < mostInARow; row++) {
      filling?.counts.forEach((count, i) => {
        left[i] = (left[i] as number) - count;
      });
      filling = fill({ ...goods, demands: left });
    }
    return first;
  }

  /** Keeps a filling as a column if it is worth more than the board by more than the rounding of the prices. */
  private keep(filling: Filling | undefined, k: number, prices: Prices): boolean {
    if (filling === undefined) return false;
    const cost = this.problem.kinds[k]?.cost ?? 0;
    const excess = filling.value - allowance(this.problem, prices, k);
    if (excess <= 100 + 1e-9 * cost * partsPerCent) return false;
    this.columns.add(k, cost, filling.counts);
    return true;
  }
}
