import { formatBoardLength, formatLength } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Cents, Display, Mm } from '../measure/quantities.js';
import { listWords } from '../text/list.js';
import { count } from '../text/plural.js';
import { outcomeOf } from './advice.js';
import { buyWords } from './advice-words.js';
import type { Plan, Purchase } from './plan.js';
import { isToBuy, ownName, type Rack, type RackBoard } from './rack.js';
import { type Bench, rackNow } from './rack-now.js';
import { isOffcut } from './rack-room.js';
import type { Setting } from './setting.js';
import { cutStepsOf, goodPieces, type RackChange, type WorkSoFar } from './work-so-far.js';

/** The boards of a section as they are now, beside what was planned. */
export type RackTold = {
  readonly section: string;
  /** Pieces cut, and pieces in all. */
  readonly cut: number;
  readonly pieces: number;
  /** Boards that nothing more is cut from, boards that were begun, and boards that were not. */
  readonly cutUp: readonly RackBoard[];
  readonly open: readonly RackBoard[];
  /** `1 x 8 ft of 2x4, 7.48`; empty where nothing is to buy. */
  readonly buyWords: string;
  /** What was planned and what it is now, where the boards are not those of the plan. */
  readonly planned: string;
  /** What happened to the boards, in order. */
  readonly happened: readonly string[];
  readonly rack: Rack;
};

const kept = new WeakMap<Plan, WeakMap<WorkSoFar, readonly RackTold[]>>();

/**
 * Every section that was begun or that something happened to; none as long as all is as bought. Worked out once
 * for a plan and a journal: the screens ask for it each time they are drawn.
 */
export function racksTold(bench: Bench): readonly RackTold[] {
  const known = kept.get(bench.plan) ?? new WeakMap<WorkSoFar, readonly RackTold[]>();
  kept.set(bench.plan, known);
  const told = known.get(bench.work) ?? toldOf(bench);
  known.set(bench.work, told);
  return told;
}

function toldOf(bench: Bench): readonly RackTold[] {
  return bench.plan.purchases.flatMap(purchase => {
    const told = rackTold(purchase, bench);
    const isAsBought = told?.cut === 0 && told.happened.length === 0;
    return told === undefined || isAsBought ? [] : [told];
  });
}

/** Boards still to be bought after slips and measured lengths, one text a section: `1 x 8 ft of 2x4, 7.48`. */
export function stillToBuy(bench: Bench): readonly string[] {
  return racksTold(bench).flatMap(({ buyWords: words }) => (words === '' ? [] : [words]));
}

function rackTold(purchase: Purchase, bench: Bench): RackTold | undefined {
  const { section } = purchase;
  const { plan, work, setting } = bench;
  const now = rackNow(section, bench);
  if (now === undefined) return undefined;
  const steps = cutStepsOf(plan).filter(step => step.section === section);
  const outcome = outcomeOf(now, bench);
  const boards = now.rack.boards;
  const changes = [
    ...besidesWords(purchase),
    ...work.rackChanges.flatMap(change =>
      change.section === section ? [happenedWords(change, setting)] : [],
    ),
  ];
  return {
    section,
    cut: steps.reduce((sum, step) => sum + goodPieces(step, work), 0),
    pieces: steps.reduce((sum, { rows }) => sum + rows.length, 0),
    cutUp: boards.filter(isOffcut),
    open: boards.filter(board => !isOffcut(board)),
    buyWords: buyWords({ ...outcome, cost: costOf(boards.filter(isToBuy)) }, setting.display),
    planned: changes.length === 0 ? '' : plannedWords(purchase, now.rack, work),
    happened: changes,
    rack: now.rack,
  };
}

function costOf(boards: readonly RackBoard[]): Cents {
  return boards.reduce((sum, { bought = 0 }) => sum + bought, 0);
}

/** `Planned: 5 boards, 37.40. Now: 6 boards, 44.88, and 1 that came.` Ripped strips are not counted as boards. */
function plannedWords(
  { section, boards, ripped, cost, priced }: Purchase,
  rack: Rack,
  { rackChanges }: WorkSoFar,
): string {
  const what = ripped === undefined ? 'board' : 'strip';
  const extra = [...rack.boards, ...rack.lost].filter(({ bought }) => bought !== undefined);
  const money = (cents: Cents) => (priced ? `, ${formatMoney(cents)}` : '');
  const came = rackChanges.reduce(
    (sum, it) => sum + (it.kind === 'added' && it.section === section ? it.count : 0),
    0,
  );
  const added = came === 0 ? '' : `, and ${came} that came`;
  const planned = boards.filter(({ besides }) => besides === undefined).length;
  return `Planned: ${count(planned, what)}${money(cost.value)}. Now: ${count(planned + extra.length, what)}${money(cost.value + costOf(extra))}${added}.`;
}

/** `Measured lengths ask for 1 board more than was bought.` */
function besidesWords({ boards }: Purchase): readonly string[] {
  const besides = boards.filter(it => it.besides !== undefined).length;
  return besides === 0
    ? []
    : [`Measured lengths ask for ${count(besides, 'board')} more than was bought.`];
}

/** `A spoiled; 17-1/2 in of it is sound.` */
function happenedWords(change: RackChange, { display }: Setting): string {
  const length = (mm: Mm) => formatLength(mm, display);
  switch (change.kind) {
    case 'added':
      return `${count(change.count, 'board')} of ${formatBoardLength(change.length, display)} came to the rack.`;
    case 'spoiled':
      return change.left > 0
        ? `1 x ${change.mark} was spoiled; ${length(change.left)} of it is sound.`
        : `1 x ${change.mark} was spoiled.`;
    case 'board-spoiled':
      return `${change.board} is bad from ${length(change.from)} to ${length(change.to)}.`;
  }
}

/** Boards by their names with what is left of them: `board 1 (5-3/8 in), board 2 (12 in)`. */
export function leftOfBoards(boards: readonly RackBoard[], display: Display): string {
  return listWords(
    boards.map(board => `${ownName(board)} (${formatLength(board.length, display)} left)`),
  );
}

/** `7 of 15 pieces cut; 2 boards cut up, 1 begun, 2 to go`. */
export function progressWords({ cut, pieces, cutUp, open }: RackTold): string {
  const begun = open.filter(({ kind }) => kind === 'started').length;
  const whole = open.filter(({ kind, cuts }) => kind !== 'started' && cuts.length > 0).length;
  const boards = [
    ...(cutUp.length > 0 ? [`${count(cutUp.length, 'board')} cut up`] : []),
    ...(begun > 0 ? [`${begun} begun`] : []),
    ...(whole > 0 ? [`${whole} to go`] : []),
  ];
  return [`${cut} of ${count(pieces, 'piece')} cut`, ...boards].join(', ');
}

/** True while something of the section is still to be cut or bought. */
export function isOpen({ cut, pieces, buyWords: words }: RackTold): boolean {
  return cut < pieces || words !== '';
}

/** Was this board, or what is left of it, planned like that from the start? */
export function isAsPlanned(board: RackBoard, plan: Plan, section: string): boolean {
  const purchase = plan.purchases.find(it => it.section === section);
  const was = purchase?.boards.find(({ number }) => number === board.number);
  if (was === undefined || board.stretch !== undefined) return false;
  const marks = (cuts: RackBoard['cuts']) => cuts.map(({ mark }) => mark).toSorted();
  const now = marks(board.cuts);
  if (board.kind === 'untouched') return now.join() === marks(was.cuts).join();
  return now.every(mark => was.cuts.some(cut => cut.mark === mark));
}
