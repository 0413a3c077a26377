import { atMost } from '../measure/tolerance.js';
import { isToBuy, type Rack, type RackBoard, relabeled, unplaced } from './rack.js';
import { placedBeside, withCut } from './rack-room.js';
import { rackFaults, type Shared, sharedOut } from './rack-solve.js';
import type { Setting } from './setting.js';
import { eachToBuy, moreThan } from './to-buy.js';
import type { Needed } from './work-so-far.js';

/** The boards after a piece was lost or a board came, and what is new about them. */
export type Replanned = Shared & {
  /** `beside`: every planned cut stays where it was. */
  readonly how: 'beside' | 'shared-out';
  /** The sound part of the piece just spoiled, with all that is cut from it now; none where nothing is sound. */
  readonly soundPart: RackBoard | undefined;
  /** Boards whose cuts are not what they were, and boards to buy. */
  readonly changed: readonly RackBoard[];
  /** Boards have to be bought that did not have to be before. */
  readonly buysMore: boolean;
};

export type Order = {
  readonly needed: readonly Needed[];
  readonly setting: Setting;
  /** The sound part of the piece just spoiled lies last on the rack. */
  readonly hasRemains: boolean;
};

/**
 * A place for every piece still needed, at the least that has to be bought. Where that is nothing, the
 * other boards stay as planned if they can; else as many of them as can at that cost. Money
 * before peace: a plan that buys less is taken even if it moves more cuts.
 */
export function replan(rack: Rack, order: Order): Replanned {
  const planned = planAnew(rack, order);
  const more = moreThan(eachToBuy(planned.rack.boards), eachToBuy(rack.boards));
  // Boards to buy are planned behind it.
  const last = planned.rack.boards.filter(board => !isToBuy(board)).at(-1);
  const soundPart = order.hasRemains ? last : undefined;
  return { ...planned, soundPart, buysMore: more.length > 0 };
}

type Anew = Omit<Replanned, 'buysMore' | 'soundPart'>;

function planAnew(rack: Rack, { needed, setting, hasRemains }: Order): Anew {
  const there = rack.boards.filter(board => !isToBuy(board));
  const before = relabeled({ ...rack, boards: there }, needed);
  const open = unplaced(before, needed);
  const served = hasRemains ? servedBy(before, needed, open) : undefined;
  const beside = served ?? placedBeside(before, open);
  if (beside === undefined) return atLeastCost(before, { needed, setting });
  const wrong = rackFaults({ rack: beside, missing: [] }, needed, before);
  if (wrong.length > 0)
    throw new Error(`boards with one more piece do not add up: ${wrong.join('; ')}`);
  const changed = changedBoards(before, beside);
  return { rack: beside, cost: 0, missing: [], how: 'beside', changed };
}

/**
 * The longest piece still to be cut that the sound part is long enough for moves there, which frees its
 * place; only where all that is needed has a place then. Boards begun give a piece up before untouched ones.
 */
function servedBy(
  rack: Rack,
  needed: readonly Needed[],
  open: readonly Needed[],
): Rack | undefined {
  const remains = rack.boards.at(-1);
  if (remains === undefined) return undefined;
  const fitting = needed
    .filter(({ length }) => atMost(length, remains.length))
    .sort((a, b) => b.length - a.length);
  const others = rack.boards.slice(0, -1);
  const begunFirst = others.toSorted(
    (a, b) => Number(a.kind !== 'started') - Number(b.kind !== 'started'),
  );
  for (const serves of fitting) {
    for (const giver of begunFirst) {
      const at = giver.cuts.findIndex(({ mark }) => mark === serves.mark);
      const cut = giver.cuts[at];
      if (cut === undefined) continue;
      const given = others.map(it =>
        it === giver ? { ...it, cuts: it.cuts.toSpliced(at, 1) } : it,
      );
      const placed = placedBeside(
        { ...rack, boards: [...given, withCut(remains, cut, rack)] },
        open,
      );
      if (placed !== undefined) return placed;
    }
  }
  return undefined;
}

/** Every cut where it was, unless it costs less to move some; then as many boards as can stay as they were. */
function atLeastCost(before: Rack, { needed, setting }: Omit<Order, 'hasRemains'>): Anew {
  const beside = sharedOut(before, { needed, setting, keeps: () => true, holds: false });
  const anew = sharedOut(before, { needed, setting, keeps: () => false, holds: true });
  const best = isBetter(anew, beside) ? anew : beside;
  const changed = changedBoards(before, best.rack);
  const how = best === beside ? 'beside' : 'shared-out';
  return { ...best, how, changed };
}

function isBetter(a: Shared, b: Shared): boolean {
  const absent = ({ missing }: Shared) => missing.reduce((sum, { count }) => sum + count, 0);
  return absent(a) < absent(b) || (absent(a) === absent(b) && a.cost < b.cost);
}

function changedBoards(before: Rack, after: Rack): readonly RackBoard[] {
  const marks = (board: RackBoard | undefined) => board?.cuts.map(({ mark }) => mark).join(' ');
  return after.boards.filter((board, at) => marks(board) !== marks(before.boards[at]));
}
