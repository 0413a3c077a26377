import { formatBoardLength } from '../measure/format-length.js';
import type { Cents, Display, Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import { inCuttingOrder, type Turns, turnsOf } from './cutting-order.js';
import type { Plan, Purchase } from './plan.js';
import { type SectionProblem, sectionProblem } from './purchase-problem.js';
import type { Setting } from './setting.js';
import type { Needed } from './work-so-far.js';

/** A piece that is to be cut from a board. */
export type RackCut = { readonly mark: string; readonly length: Mm };

/** A board as it lies on the rack now. */
export type RackBoard = {
  /** `board 3`, `a spare board of 8 ft`, `the sound part of the spoiled B`. */
  readonly name: string;
  /** The number that the plan gave it, and that is written on it; none where the plan did not have it. */
  readonly number?: number;
  /** Which stretch of a board that is bad in part: `up to 30 in`. */
  readonly stretch?: string;
  /** What the store asks for it, where it was not among the boards of the plan; 0 without prices. */
  readonly bought?: Cents;
  /**
   * `untouched`: as the plan has it. `started`: something was cut from it. `spare`: on hand, and the plan
   * did not need it. `remains`: the sound part of a spoiled piece. `stretch`: what is sound of a board
   * beyond its bad part. `to-buy`: not there yet.
   */
  readonly kind: 'untouched' | 'started' | 'spare' | 'remains' | 'stretch' | 'to-buy';
  /** What is left of it. */
  readonly length: Mm;
  /** What is still to be cut from it, in the order of sawing. */
  readonly cuts: readonly RackCut[];
};

/** The boards of one section, and what a cut takes off them. */
export type Rack = {
  readonly section: string;
  readonly kerf: Mm;
  readonly trim: Mm;
  readonly boards: readonly RackBoard[];
  /** Boards of which nothing is sound: nothing comes from them any more, and they are paid for all the same. */
  readonly lost: readonly RackBoard[];
  /** When the pieces come to the saw. */
  readonly turns: Turns;
  /** What the store sells, as a cutting problem, with the boards that were on hand at first. */
  readonly asked: SectionProblem;
};

/** A board that pieces are planned on and that is not there yet. */
export function isToBuy({ kind }: Pick<RackBoard, 'kind'>): boolean {
  return kind === 'to-buy';
}

/** The end of such a board has not been squared yet. */
export function isFresh({ kind }: RackBoard): boolean {
  return kind === 'untouched' || kind === 'spare' || kind === 'to-buy';
}

/**
 * The rack before the first cut: the boards of the plan, bought or on hand, what was on hand besides, and last what
 * measured lengths ask for that is not there.
 * Undefined for a section that the plan does not buy.
 */
export function plannedRack(
  plan: Pick<Plan, 'purchases' | 'cutList'>,
  section: string,
  setting: Setting,
): Rack | undefined {
  const purchase = plan.purchases.find(it => it.section === section);
  if (purchase === undefined) return undefined;
  const rows = plan.cutList.filter(row => row.section === section);
  const asked = sectionProblem(rows, section, setting);
  const there = purchase.boards.flatMap(
    ({ number, length, cuts, besides }): readonly RackBoard[] =>
      besides === undefined
        ? [{ name: `board ${number}`, number, kind: 'untouched', length, cuts }]
        : [],
  );
  const spares = [...sparesOf(purchase, asked, setting), ...spareStrips(purchase, setting)];
  const boards = [...there, ...spares, ...besidesOf(purchase, setting)];
  const { kerf, trim } = purchase;
  return { section, kerf, trim, boards, lost: [], turns: turnsOf(rows), asked };
}

/** What measured lengths ask for and nobody has entered as bought. */
function besidesOf({ boards }: Purchase, { display }: Setting): readonly RackBoard[] {
  return boards.flatMap(({ length, cuts, besides }) =>
    besides === undefined ? [] : [toBuy({ length, cuts, bought: besides }, display)],
  );
}

/** A board that the store still has, with what is to be cut from it. */
export function toBuy(
  board: Required<Pick<RackBoard, 'length' | 'cuts' | 'bought'>>,
  display: Display,
): RackBoard {
  return {
    name: `a new ${formatBoardLength(board.length, display)} board`,
    kind: 'to-buy',
    ...board,
  };
}

/** Boards on hand that no piece of the plan is cut from. */
function sparesOf(
  { boards }: Purchase,
  { problem, stock }: SectionProblem,
  { display }: Setting,
): readonly RackBoard[] {
  return problem.stock.flatMap(({ id, available = 0 }) => {
    const meaning = stock.get(id);
    if (meaning === undefined || !meaning.onHand) return [];
    const { length } = meaning;
    const used = boards.filter(it => it.onHand && sameLength(it.length, length)).length;
    const name = `a spare board of ${formatBoardLength(length, display)}`;
    return Array.from({ length: Math.max(0, available - used) }, () => spare(name, length));
  });
}

/** Strips that come out of the ripped boards beyond those that are cut. */
function spareStrips(
  { boards, buy, ripped }: Purchase,
  { display }: Setting,
): readonly RackBoard[] {
  if (ripped === undefined) return [];
  return buy.flatMap(({ length, count }) => {
    const cut = boards.filter(it => !it.onHand && sameLength(it.length, length.value)).length;
    const name = `a spare strip of ${formatBoardLength(length.value, display)}`;
    const strips = Math.max(0, count * ripped.strips - cut);
    return Array.from({ length: strips }, () => spare(name, length.value));
  });
}

/** A whole board that nothing is planned on. */
export function spare(name: string, length: Mm): RackBoard {
  return { name, kind: 'spare', length, cuts: [] };
}

/**
 * The rack after so many pieces of that length were sawn. Taken for granted: boards are cut in the order
 * of their numbers, as the plan says, so a piece comes from the first board that still has one to give.
 * A 96 in board gives a 45 in piece: 96 - 1/4 - 1/8 - 45 - 1/8 = 50-1/2 in is left.
 */
export function afterCuts(rack: Rack, length: Mm, count: number): Rack {
  let left = count;
  const boards = rack.boards.map(board => {
    let now = board;
    while (left > 0) {
      const next = now.cuts.findIndex(cut => sameLength(cut.length, length));
      if (next < 0) break;
      now = sawn(now, next, rack);
      left -= 1;
    }
    return now;
  });
  return { ...rack, boards };
}

/** The board once the cut at that place of its list is made, at another length where one is given: squared first where no end of it is yet. */
export function sawn(
  board: RackBoard,
  at: number,
  { kerf, trim }: Pick<Rack, 'kerf' | 'trim'>,
  length = board.cuts[at]?.length ?? 0,
): RackBoard {
  if (board.cuts[at] === undefined) return board;
  const squared = isFresh(board) ? trim + kerf : 0;
  return {
    ...board,
    kind: board.kind === 'remains' || board.kind === 'stretch' ? board.kind : 'started',
    length: Math.max(0, board.length - squared - length - kerf),
    cuts: board.cuts.toSpliced(at, 1),
  };
}

/**
 * The rack after one piece of that length was sawn and lost. Where none of that length is planned any more, since a
 * measured width made others of them, it came in the place of the one that is nearest in length.
 */
export function afterLoss(rack: Rack, length: Mm): Rack {
  const off = (cut: RackCut) => Math.abs(cut.length - length);
  const nearest = Math.min(...rack.boards.flatMap(({ cuts }) => cuts.map(off)));
  const place = rack.boards.findIndex(({ cuts }) =>
    cuts.some(cut => sameLength(off(cut), nearest)),
  );
  const board = rack.boards[place];
  if (board === undefined) return rack;
  const at = board.cuts.findIndex(cut => sameLength(off(cut), nearest));
  return { ...rack, boards: rack.boards.with(place, sawn(board, at, rack, length)) };
}

type Named = Pick<RackBoard, 'name' | 'kind' | 'stretch'>;

/** A board as it is called at the bench: one that was begun is `the rest of board 3`. */
export function boardName(board: Named): string {
  const whole = ownName(board);
  return board.kind === 'started'
    ? `the rest of ${whole.replace(/^a (?=new|spare)/, 'the ')}`
    : whole;
}

/** A board as it was called before it was begun: `board 4, up to 30 in`. */
export function ownName({ name, stretch }: Named): string {
  return stretch === undefined ? name : `${name}, ${stretch}`;
}

/**
 * The same rack with each planned cut under a mark that is still needed: a piece sawn for one mark frees
 * the place of another of its length. A cut that nobody needs any more is dropped. A board that keeps all its
 * marks is the same board.
 */
export function relabeled(rack: Rack, needed: readonly Needed[]): Rack {
  const open = new Map(needed.map(({ mark, count }) => [mark, count]));
  const take = (mark: string | undefined): string | undefined => {
    const count = mark === undefined ? 0 : (open.get(mark) ?? 0);
    if (mark === undefined || count === 0) return undefined;
    open.set(mark, count - 1);
    return mark;
  };
  const kept = rack.boards.map(board => ({
    board,
    cuts: board.cuts.map(({ mark, length }) => ({ mark: take(mark), length })),
  }));
  const other = (length: Mm) =>
    needed.find(it => sameLength(it.length, length) && (open.get(it.mark) ?? 0) > 0)?.mark;
  const boards = kept.map(({ board, cuts }) => {
    const now = cuts.flatMap(({ mark, length }) => {
      const label = mark ?? take(other(length));
      return label === undefined ? [] : [{ mark: label, length }];
    });
    return hasMarksOf(board.cuts, now)
      ? board
      : { ...board, cuts: inCuttingOrder(now, rack.turns) };
  });
  return { ...rack, boards };
}

function hasMarksOf(a: readonly RackCut[], b: readonly RackCut[]): boolean {
  return a.length === b.length && a.every(({ mark }, at) => mark === b[at]?.mark);
}

/** What is needed and has no place on a board yet. */
export function unplaced(rack: Rack, needed: readonly Needed[]): readonly Needed[] {
  const cuts = rack.boards.flatMap(board => board.cuts);
  return needed.flatMap(it => {
    const count = it.count - cuts.filter(({ mark }) => mark === it.mark).length;
    return count > 0 ? [{ ...it, count }] : [];
  });
}
