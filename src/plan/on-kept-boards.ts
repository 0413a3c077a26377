import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import { boughtCount, buyLines } from './buy-lines.js';
import { cutBoard, holdsItsCuts } from './cut-board.js';
import { inCuttingOrder, turnsOf } from './cutting-order.js';
import type { KeptBoards, KeptSection } from './kept-boards.js';
import type { BoughtBoard, CutRow, Purchase } from './plan.js';
import { type SectionProblem, sectionProblem } from './purchase-problem.js';
import { cheaperRipped } from './rip-purchase.js';
import type { Setting } from './setting.js';
import { spareFor } from './spare.js';

type Needed = { readonly rows: readonly CutRow[]; readonly setting: Setting };

/**
 * The boards of a section as a build began with them; without a beginning, or where its boards do not give the pieces,
 * those that cost the least today, ripped out of wider ones where that costs less.
 */
export function asBegun(
  asSold: Purchase,
  began: KeptSection | undefined,
  needed: Needed,
): Purchase {
  const whole =
    began?.from === undefined ? began && onKeptBoards(asSold, began, needed) : undefined;
  if (whole !== undefined) return whole;
  const cheapest = cheaperRipped(asSold, needed.rows, needed.setting);
  return (began && onKeptBoards(cheapest, began, needed)) ?? cheapest;
}

/**
 * The purchase on the boards that the build began with; undefined where its pieces do not come out of them. What is
 * known of the cost of the purchase is told of them only if they cost the same.
 */
function onKeptBoards(
  purchase: Purchase,
  kept: KeptSection,
  { rows, setting }: Needed,
): Purchase | undefined {
  if (isAsKept(purchase, kept)) return purchase;
  if (kept.from !== purchase.ripped?.from || purchase.missing.length > 0) return undefined;
  const asked = sectionProblem(rows, purchase.section, setting);
  if (!isCutFrom(kept, rows) || !isThere(kept, purchase, asked)) return undefined;
  if (!kept.boards.every(board => holdsItsCuts(board, purchase))) return undefined;
  const turns = turnsOf(rows);
  const boards = kept.boards.map(({ cuts, ...board }, at) =>
    cutBoard({ number: at + 1, ...board, cuts: inCuttingOrder(cuts, turns) }, purchase),
  );
  if (purchase.ripped !== undefined) return { ...purchase, boards };
  const { spare: _, ...rest } = purchase;
  const spare = spareFor(asked, boards);
  const buy = buyLines(asked, boards, setting.display);
  const cents = buy.reduce((sum, { each, count }) => sum + each.value * count, 0);
  const isAsGood = purchase.priced
    ? cents === purchase.cost.value
    : sameLength(lengthOf(buy), lengthOf(purchase.buy)) &&
      boughtCount({ buy }) === boughtCount(purchase);
  return {
    ...rest,
    boards,
    buy,
    cost: figure(purchase.priced ? cents : 0, 'cents', purchase.cost.because, COMPUTED),
    proof: isAsGood
      ? purchase.proof
      : { kind: 'none', words: 'the boards that the build began with' },
    ...(spare === undefined ? {} : { spare }),
  };
}

function lengthOf(buy: Purchase['buy']): Mm {
  return buy.reduce((sum, { length, count }) => sum + length.value * count, 0);
}

/** Are these the boards that the build began with, each with its own pieces? */
function isAsKept({ boards, ripped }: Purchase, kept: KeptSection): boolean {
  return (
    ripped?.from === kept.from &&
    boards.length === kept.boards.length &&
    boards.every(({ length, onHand, cuts }, at) => {
      const other = kept.boards[at];
      return (
        other !== undefined &&
        onHand === other.onHand &&
        sameLength(length, other.length) &&
        cuts.length === other.cuts.length &&
        haveSameCuts(cuts, other.cuts)
      );
    })
  );
}

type Cut = BoughtBoard['cuts'][number];

/** In what order a board is sawn is the matter of the steps, and not of what comes from it. */
function haveSameCuts(some: readonly Cut[], others: readonly Cut[]): boolean {
  const sorted = (cuts: readonly Cut[]) => cuts.toSorted((a, b) => a.mark.localeCompare(b.mark));
  const theirs = sorted(others);
  return sorted(some).every((cut, at) => isSameCut(cut, theirs[at]));
}

function isSameCut(cut: Cut, other: Cut | undefined): boolean {
  return other !== undefined && cut.mark === other.mark && sameLength(cut.length, other.length);
}

/** Every piece once, at its length, and nothing else. */
function isCutFrom({ boards }: KeptSection, rows: readonly CutRow[]): boolean {
  const cuts = boards.flatMap(board => board.cuts);
  const wanted = rows.reduce((sum, { count }) => sum + count, 0);
  return (
    cuts.length === wanted &&
    rows.every(
      ({ mark, length, count }) =>
        cuts.filter(cut => isSameCut(cut, { mark, length: length.value })).length === count,
    )
  );
}

/** The store sells such boards, or they are on hand; strips come out of the boards that are ripped. */
function isThere(
  { boards }: KeptSection,
  { ripped, buy }: Purchase,
  { problem, stock }: SectionProblem,
): boolean {
  return boards.every(({ length, onHand }) => {
    const alike = boards.filter(it => it.onHand === onHand && sameLength(it.length, length));
    if (ripped !== undefined && !onHand) {
      const sold = buy.filter(line => sameLength(line.length.value, length));
      return alike.length <= sold.reduce((sum, { count }) => sum + count, 0) * ripped.strips;
    }
    const known = problem.stock.filter(({ id }) => {
      const one = stock.get(id);
      return one !== undefined && one.onHand === onHand && sameLength(one.length, length);
    });
    return (
      known.length > 0 &&
      known.some(({ available }) => available === undefined || alike.length <= available)
    );
  });
}

/** Sections whose boards are not those that the build began with, in words for the one who numbered them. */
export function keptTroubles(
  purchases: readonly Purchase[],
  kept: KeptBoards | undefined,
): readonly string[] {
  return (kept ?? []).flatMap(it => {
    const now = purchases.find(({ section }) => section === it.section);
    if (now === undefined || isAsKept(now, it)) return [];
    return [
      `${it.section}: the boards kept with this build do not give its pieces, so they are planned anew. Before the next cut, compare the numbers on your boards with the page of boards.`,
    ];
  });
}
