import type { Cents } from '../measure/quantities.js';
import { toUnits } from '../measure/round.js';
import { checkPlan } from '../solve/cutting/check-plan.js';
import { planCutting } from '../solve/cutting/plan-cutting.js';
import type { CutBoard, CuttingPlan, CuttingProblem, Stock } from '../solve/cutting/problem.js';
import { inCuttingOrder } from './cutting-order.js';
import { isFresh, type Rack, type RackBoard, toBuy, unplaced } from './rack.js';
import { roomOn } from './rack-room.js';
import type { Setting } from './setting.js';
import type { Needed } from './work-so-far.js';

/** The boards shared out anew: what has to be bought for it, and which pieces no board is left for. */
export type Shared = {
  readonly rack: Rack;
  readonly cost: Cents;
  readonly missing: readonly Needed[];
};

/** Somebody stands there and waits: about a twentieth of a second of search. */
const EFFORT = 0.05;

/** What is to be cut, who sells boards, and which boards keep the cuts that they have. */
export type Sharing = {
  readonly needed: readonly Needed[];
  readonly setting: Setting;
  readonly keeps: (board: RackBoard) => boolean;
  /** Cuts of other boards stay as they were as well, as far as that costs nothing. */
  readonly holds: boolean;
};

/**
 * Everything needed on boards again at the least cost; boards that keep their cuts may take more beside
 * them. Throws where the boards do not add up, which would be a mistake of ours.
 */
export function sharedOut(rack: Rack, { needed, setting, keeps, holds }: Sharing): Shared {
  const kept = {
    ...rack,
    boards: rack.boards.map(board => (keeps(board) ? board : { ...board, cuts: [] })),
  };
  const open = unplaced(kept, needed);
  const problem = problemOf(kept, open);
  const keep = holds ? boardsAsTheyWere(rack, kept, problem) : [];
  const plan = planCutting(problem, { effort: EFFORT, keep, first: setting.first });
  const shared = withPlan(kept, plan, { needed: open, setting });
  const wrong = [...checkPlan(problem, plan), ...rackFaults(shared, needed, rack)];
  if (wrong.length > 0)
    throw new Error(`boards shared out anew do not add up: ${wrong.join('; ')}`);
  return shared;
}

/**
 * The boards that were emptied, with the cuts that they had, as the solver tells a board, longest first: whole boards
 * before those that were begun, since that is the order in which they had best stay.
 */
function boardsAsTheyWere(
  rack: Rack,
  emptied: Rack,
  { pieces, stock, kerf }: CuttingProblem,
): readonly CutBoard[] {
  const lengthOf = new Map(pieces.map(({ id, length }) => [id, length]));
  const told = rack.boards.flatMap((board, at) => {
    const room = stock.find(({ id }) => id === `rack-${at}`)?.length;
    const isEmptied = emptied.boards[at]?.cuts.length === 0;
    if (room === undefined || board.cuts.length === 0 || !isEmptied) return [];
    const cuts = board.cuts.toSorted((a, b) => b.length - a.length).map(({ mark }) => mark);
    const used = cuts.reduce((sum, mark) => sum + (lengthOf.get(mark) ?? 0) + kerf, 0);
    return [{ board, cut: { stock: `rack-${at}`, cuts, offcut: Math.max(0, room - used) } }];
  });
  return told
    .sort((a, b) => Number(!isFresh(a.board)) - Number(!isFresh(b.board)))
    .map(({ cut }) => cut);
}

/** The open pieces on what the boards have left, and on boards from the store. */
function problemOf(rack: Rack, open: readonly Needed[]): CuttingProblem {
  const pieces = open.map(({ mark, length, count }) => ({
    id: mark,
    length: toUnits(length, 'up'),
    count,
  }));
  const shortest = Math.min(...pieces.map(({ length }) => length));
  const onRack = rack.boards.flatMap((board, at): Stock[] => {
    const length = roomOn(board, rack);
    if (length < Math.max(1, shortest)) return [];
    return [{ id: `rack-${at}`, length, cost: 0, available: 1, trimStart: 0, trimEnd: 0 }];
  });
  const store = rack.asked.problem.stock.filter(
    ({ id }) => rack.asked.stock.get(id)?.onHand === false,
  );
  return { pieces, stock: [...onRack, ...store], kerf: toUnits(rack.kerf, 'up') };
}

type Open = Pick<Sharing, 'needed' | 'setting'>;

function withPlan(rack: Rack, plan: CuttingPlan, { needed, setting }: Open): Shared {
  const lengthOf = new Map(needed.map(({ mark, length }) => [mark, length]));
  const cutsOf = (board: CutBoard | undefined) =>
    (board?.cuts ?? []).map(mark => ({ mark, length: lengthOf.get(mark) ?? 0 }));
  const old = rack.boards.map((board, at) => {
    const more = cutsOf(plan.boards.find(({ stock }) => stock === `rack-${at}`));
    return { ...board, cuts: inCuttingOrder([...board.cuts, ...more], rack.turns) };
  });
  const bought = plan.boards.flatMap((board): RackBoard[] => {
    const store = rack.asked.stock.get(board.stock);
    if (store === undefined || board.stock.startsWith('rack-')) return [];
    const cost = rack.asked.problem.stock.find(({ id }) => id === board.stock)?.cost ?? 0;
    const bought = rack.asked.priced ? cost : 0;
    const cuts = inCuttingOrder(cutsOf(board), rack.turns);
    return [toBuy({ length: store.length, cuts, bought }, setting.display)];
  });
  const missing = plan.missing.flatMap(({ piece, count }) =>
    needed.filter(({ mark }) => mark === piece).map(it => ({ ...it, count })),
  );
  return { rack: { ...rack, boards: [...old, ...bought] }, cost: plan.cost, missing };
}

/** Adds it up again from the boards alone: every piece has its place, and no board gives more than it has. */
export function rackFaults(
  { rack, missing }: Pick<Shared, 'rack' | 'missing'>,
  needed: readonly Needed[],
  before: Rack,
): readonly string[] {
  const open = unplaced(rack, needed).map(({ mark, count }) => `${count} x ${mark}`);
  const told = missing.map(({ mark, count }) => `${count} x ${mark}`);
  const planned = rack.boards.flatMap(({ cuts }) => cuts).length;
  const wanted = needed.reduce((sum, { count }) => sum + count, 0);
  const absent = missing.reduce((sum, { count }) => sum + count, 0);
  const faults = rack.boards
    .filter(board => isOverfull(board, rack))
    .map(({ name }) => `${name} is too short for its pieces`);
  if (open.join() !== told.join())
    faults.push(`without a board: ${open.join()}, told: ${told.join()}`);
  if (planned + absent !== wanted)
    faults.push(`${planned + absent} pieces planned, ${wanted} needed`);
  if (rack.boards.length < before.boards.length) faults.push('a board was lost');
  return faults;
}

/** The last piece may end flush with the board: then no blade's width is lost behind it. */
function isOverfull(board: RackBoard, rack: Rack): boolean {
  const last = board.cuts.at(-1);
  if (last === undefined) return false;
  const before = { ...board, cuts: board.cuts.slice(0, -1) };
  return roomOn(before, rack) < toUnits(last.length, 'up');
}
