import { formatLength } from '../measure/format-length.js';
import { toUnits } from '../measure/round.js';
import { cutBoard } from './cut-board.js';
import { inCuttingOrder } from './cutting-order.js';
import type { BoughtBoard, CutRow, Plan, Purchase } from './plan.js';
import {
  isToBuy,
  plannedRack,
  type Rack,
  type RackBoard,
  type RackCut,
  sawn as sawnFrom,
} from './rack.js';
import { roomOn } from './rack-room.js';
import { replan } from './replan.js';
import type { Setting } from './setting.js';
import { spareFor } from './spare.js';

type Bought = Pick<Plan, 'purchases' | 'cutList'>;

/** What is sawn already, by the ids of the parts that it is. */
export type Sawn = ReadonlySet<string>;

/**
 * The boards of a plan, cut by a new cut list: they are bought, and some are begun. Every piece stays on
 * its board as long as it fits; what does not is moved, or bought for: a board besides, that `buy` and `cost` know
 * nothing of. Undefined where the section was
 * not in the plan before, or is ripped out of wider boards.
 */
export function refit(
  before: Bought,
  rows: readonly CutRow[],
  sawn: Sawn,
  setting: Setting,
): Purchase | undefined {
  const [first] = rows;
  const old = before.purchases.find(({ section }) => section === first?.section);
  if (first === undefined || old === undefined || old.ripped !== undefined) return undefined;
  const cuts = cutsNow(old, before, rows);
  const isSawn = ({ id }: Cut) => sawn.has(id);
  const planned = plannedRack({ purchases: [old], cutList: rows }, first.section, setting);
  if (planned === undefined) return undefined;
  const rack = {
    ...planned,
    boards: planned.boards.map((it, at) => begun(it, cuts[at] ?? [], { isSawn, rack: planned })),
  };
  const open = rows.flatMap(({ mark, name, length, pieces }) => {
    const count = pieces.filter(id => !sawn.has(id)).length;
    return count === 0 ? [] : [{ mark, name, length: length.value, count }];
  });
  const shared = replan(withinBoards(rack), { needed: open, setting, hasRemains: false });
  const boards = shared.rack.boards
    .flatMap((board, at): readonly Whole[] => {
      const own = (cuts[at] ?? []).filter(isSawn);
      const all = [...bare(own), ...board.cuts];
      const was = old.boards[at];
      if (was === undefined && all.length === 0) return [];
      const length = planned.boards[at]?.length ?? board.length;
      const onHand = was?.onHand ?? board.kind === 'spare';
      const besides = isToBuy(board) ? { besides: board.bought ?? 0 } : {};
      return [{ length, onHand, ...besides, cuts: all }];
    })
    .map((board, at) => cutBoard({ number: at + 1, ...board }, planned));
  const { spare: _, ...kept } = old;
  const spare = spareFor(planned.asked, boards);
  return {
    ...kept,
    ...(spare === undefined ? {} : { spare }),
    width: first.width,
    thickness: first.thickness,
    boards,
    proof: { kind: 'none', words: 'The boards are those of the plan, cut by the measured sizes.' },
    missing: shared.missing.map(
      it => `no board for ${it.count} x ${it.mark} ${formatLength(it.length, setting.display)}`,
    ),
  };
}

type Cut = RackCut & { readonly id: string };

/** What each board of the plan gives now: the same parts, at the length that they have now. */
function cutsNow(
  old: Purchase,
  before: Bought,
  rows: readonly CutRow[],
): readonly (readonly Cut[])[] {
  const rowOf = new Map(rows.flatMap(row => row.pieces.map(id => [id, row] as const)));
  const left = new Map(before.cutList.map(({ mark, pieces }) => [mark, [...pieces]]));
  return old.boards.map(({ cuts }) =>
    cuts.flatMap(({ mark }): readonly Cut[] => {
      const id = left.get(mark)?.shift();
      const row = id === undefined ? undefined : rowOf.get(id);
      if (id === undefined || row === undefined) return [];
      return [{ id, mark: row.mark, length: row.length.value }];
    }),
  );
}

type Begun = { readonly isSawn: (cut: Cut) => boolean; readonly rack: Rack };

/** A board of which these pieces are sawn and those are still to be. */
function begun(board: RackBoard, cuts: readonly Cut[], { isSawn, rack }: Begun): RackBoard {
  const own = cuts.filter(isSawn);
  const open = inCuttingOrder(
    cuts.filter(cut => !isSawn(cut)),
    rack.turns,
  );
  const whole: RackBoard = { ...board, cuts: bare([...own, ...open]) };
  return own.reduce(now => sawnFrom(now, 0, rack), whole);
}

function bare(cuts: readonly RackCut[]): readonly RackCut[] {
  return cuts.map(({ mark, length }) => ({ mark, length }));
}

/** Where the pieces of a board have grown too long for it, the shortest lose their place. */
function withinBoards(rack: Rack): Rack {
  const fitting = (board: RackBoard): RackBoard => {
    const shortest = Math.min(...board.cuts.map(({ length }) => length));
    const at = board.cuts.findLastIndex(({ length }) => length === shortest);
    if (at < 0) return board;
    const others = { ...board, cuts: board.cuts.toSpliced(at, 1) };
    return roomOn(others, rack) >= toUnits(shortest, 'up') ? board : fitting(others);
  };
  return { ...rack, boards: rack.boards.map(fitting) };
}

/** A board of the section, not numbered yet. */
type Whole = Omit<BoughtBoard, 'number' | 'offcut' | 'slack'>;
