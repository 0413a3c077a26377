import type { CuttingPlan, CuttingProblem, Stock } from '../cutting/problem.js';
import { bestFilling, type Patience } from './best-filling.js';

/** Parts of a cent in which the plan tells what pieces are worth. */
const PARTS_PER_CENT = 1_000_000;

/** A board at its dearest: no pieces that fit on it are worth more than `allowed`. */
export type BoardProof = {
  readonly stock: Stock;
  /** The most valuable pieces it holds: ids and how many. */
  readonly filling: readonly { readonly piece: string; readonly times: number }[];
  readonly worth: number;
  /** What the pieces may be worth: the price, and where there are only so many boards, rent on top of it. */
  readonly allowed: number;
  readonly rent: number;
};

/** Why no plan costs less, as a sum that can be done again by hand. All money in parts of a cent. */
export type PriceProof = {
  /** How many of these make a cent. */
  readonly parts: number;
  readonly worths: readonly {
    readonly piece: string;
    readonly count: number;
    readonly worth: number;
  }[];
  readonly boards: readonly BoardProof[];
  /** All pieces at their worth, less the rents of all boards that have one. */
  readonly bound: number;
};

/** Fillings that are looked at in all: about a second. */
const PATIENCE = 3_000_000;

/** Roundings of the worths, coarsest first: whole cents, tenths and so on. */
const GRAINS = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000];

/**
 * The proof from what the pieces are worth: if no board holds pieces worth more than its price, pieces worth
 * 14.53 together cannot be had for less. The worths are rounded down as coarsely as the rounded-up bound
 * allows. Undefined when pieces have no board, or when there is no such sum that a person could check.
 */
export function priceProof(problem: CuttingProblem, plan: CuttingPlan): PriceProof | undefined {
  if (plan.missing.length > 0) return undefined;
  const patience = { left: PATIENCE };
  const finest = proofAt(problem, plan, { parts: PARTS_PER_CENT, patience });
  if (finest === undefined) return undefined;
  const cents = (proof: PriceProof) => Math.ceil(proof.bound / proof.parts);
  for (const parts of GRAINS) {
    const proof = proofAt(problem, plan, { parts, patience });
    if (proof !== undefined && cents(proof) >= cents(finest)) return proof;
  }
  return finest;
}

function proofAt(
  problem: CuttingProblem,
  plan: CuttingPlan,
  { parts, patience }: { readonly parts: number; readonly patience: Patience },
): PriceProof | undefined {
  const worths = problem.pieces
    .filter(({ count }) => count > 0)
    .map(({ id, count }) => ({
      piece: id,
      count,
      worth: Math.floor(((plan.duals.get(id) ?? 0) * parts) / PARTS_PER_CENT),
    }));
  const boards: BoardProof[] = [];
  for (const stock of problem.stock) {
    const proof = boardProof(stock, { problem, worths, parts, patience });
    if (proof === undefined) return undefined;
    boards.push(proof);
  }
  const pieces = worths.reduce((sum, { count, worth }) => sum + count * worth, 0);
  const rents = boards.reduce((sum, { stock, rent }) => sum + (stock.available ?? 0) * rent, 0);
  return { parts, worths, boards, bound: Math.max(0, pieces - rents) };
}

type Ground = {
  readonly problem: CuttingProblem;
  readonly worths: PriceProof['worths'];
  readonly parts: number;
  readonly patience: Patience;
};

/** The board with its best filling; undefined where that is worth more than a board without limit costs. */
function boardProof(
  stock: Stock,
  { problem, worths, parts, patience }: Ground,
): BoardProof | undefined {
  const { kerf } = problem;
  const lengths = new Map(problem.pieces.map(({ id, length }) => [id, length]));
  const room = stock.length - stock.trimStart - stock.trimEnd + kerf;
  const fillers = worths.map(({ piece, worth, count }) => ({
    takes: (lengths.get(piece) ?? 0) + kerf,
    worth,
    count,
  }));
  const best = bestFilling(Math.max(0, room), fillers, patience);
  if (best === undefined) return undefined;
  const price = stock.cost * parts;
  const rent = Math.max(0, best.worth - price);
  if (rent > 0 && stock.available === undefined) return undefined;
  const filling = worths.flatMap(({ piece }, at) => {
    const times = best.times[at] ?? 0;
    return times > 0 ? [{ piece, times }] : [];
  });
  return { stock, filling, worth: best.worth, allowed: price + rent, rent };
}
