import type { Cents, Milliliters } from '../measure/quantities.js';

/** A can on the shelf of the store; the price where it is known. */
export type CanOffer = {
  readonly name: string;
  readonly holds: Milliliters;
  readonly price?: Cents;
};

export type CanCount = { readonly offer: CanOffer; readonly count: number };

export type Cans = {
  readonly cans: readonly CanCount[];
  readonly leftOver: Milliliters;
  /** Left out where a price is missing. */
  readonly cost?: Cents;
};

/** Nobody misses a thousandth of the smallest can, and four quarts are a gallon. */
const NOT_MISSED = 0.001;

type Best = { readonly rank: readonly number[]; readonly counts: readonly number[] };

/**
 * The cans to buy for an amount: at least cost, then least left over, or the other way round; then
 * fewest cans. Without all prices it is by what is left over. Every way to fill up can by can is looked
 * at, equal rests once, so no other way is better.
 * @example 3.2 gal, gallons at 40 and quarts at 15, by cost // 3 gallons and 1 quart, 135
 */
export function cansFor(
  amount: Milliliters,
  offers: readonly CanOffer[],
  by: 'cost' | 'left-over',
): Cans {
  const usable = offers.filter(({ holds }) => holds > 0);
  if (amount <= 0 || usable.length === 0) return { cans: [], leftOver: 0 };
  const priced = usable.every(({ price }) => price !== undefined);
  const smallest = Math.min(...usable.map(({ holds }) => holds));
  const wanted = amount - smallest * NOT_MISSED;
  const best = fill(wanted, usable, priced && by === 'cost');
  const cans = usable.flatMap((offer, at) => {
    const count = best.counts[at] ?? 0;
    return count > 0 ? [{ offer, count }] : [];
  });
  const held = cans.reduce((sum, { offer, count }) => sum + offer.holds * count, 0);
  const leftOver = Math.max(0, held - amount);
  return priced ? { cans, leftOver, cost: costOf(cans) } : { cans, leftOver };
}

function costOf(cans: readonly CanCount[]): Cents {
  return cans.reduce((sum, { offer, count }) => sum + (offer.price ?? 0) * count, 0);
}

/** The best cans for an amount, worked out from the smallest rest that can be left up to all of it. */
function fill(wanted: Milliliters, offers: readonly CanOffer[], byCost: boolean): Best {
  const nothing: Best = { rank: [0, 0, 0], counts: offers.map(() => 0) };
  const known = new Map<number, Best>();
  const bestFor = (rest: Milliliters): Best => {
    if (rest <= 0) return nothing;
    const best = known.get(keyOf(rest));
    if (best === undefined) throw new Error('a larger rest was worked out before a smaller one');
    return best;
  };
  for (const rest of restsOf(wanted, offers)) {
    const ways = offers.map((offer, at) => withOne(bestFor(rest - offer.holds), offer, at, byCost));
    known.set(
      keyOf(rest),
      ways.reduce((a, b) => (isBetter(b, a) ? b : a)),
    );
  }
  return bestFor(wanted);
}

/** Every rest that some cans leave to be filled, each once, smallest first. */
function restsOf(wanted: Milliliters, offers: readonly CanOffer[]): readonly Milliliters[] {
  const rests = new Map<number, Milliliters>();
  const open = [wanted];
  for (let rest = open.pop(); rest !== undefined; rest = open.pop()) {
    if (rest <= 0 || rests.has(keyOf(rest))) continue;
    rests.set(keyOf(rest), rest);
    for (const { holds } of offers) open.push(rest - holds);
  }
  return [...rests.values()].sort((a, b) => a - b);
}

/** Rests that differ by less than a hundredth of a milliliter are the same. */
function keyOf(rest: Milliliters): number {
  return Math.round(rest * 100);
}

function withOne(before: Best, { holds, price = 0 }: CanOffer, at: number, byCost: boolean): Best {
  const [first = 0, second = 0, cans = 0] = before.rank;
  const added = byCost ? [price, holds] : [holds, price];
  return {
    rank: [first + (added[0] ?? 0), second + (added[1] ?? 0), cans + 1],
    counts: before.counts.map((count, index) => (index === at ? count + 1 : count)),
  };
}

function isBetter(a: Best, b: Best): boolean {
  for (const [at, value] of a.rank.entries()) {
    const other = b.rank[at] ?? 0;
    if (Math.abs(value - other) > 1e-9) return value < other;
  }
  return false;
}
