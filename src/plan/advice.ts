import type { Cents, Mm } from '../measure/quantities.js';
import { fromUnits } from '../measure/round.js';
import { atMost } from '../measure/tolerance.js';
import type { Step } from './plan.js';
import type { Rack, RackBoard } from './rack.js';
import { type Bench, type RackNow, rackNow } from './rack-now.js';
import { isOffcut, roomOn } from './rack-room.js';
import { hasRoomFor, oneBoardMore, type SpareBoard } from './rack-spare.js';
import { eachToBuy, moreThan, type ToBuy } from './to-buy.js';
import {
  type AddedBoards,
  cutStepsOf,
  type Needed,
  type SpoiledPiece,
  stillNeeded,
} from './work-so-far.js';

/** Where the new piece comes from. */
export type Fits =
  /** Nothing is lost: what is left is long enough. */
  | 'nothing-to-do'
  /** Out of what is left over anyway. */
  | 'offcut'
  /** Out of boards that lie there. */
  | 'on-the-rack'
  /** What is left becomes other pieces that are still to be cut; nothing has to be bought. */
  | 'serves-elsewhere'
  | 'another-board';

/** The boards of a section after a change, and what has to be bought for it. */
export type RackOutcome = {
  readonly section: string;
  /** Boards that are cut otherwise than before, with all that is to be cut from them now. */
  readonly changed: readonly RackBoard[];
  /** The sound part of the piece just spoiled, which is one of them where it serves elsewhere. */
  readonly soundPart: RackBoard | undefined;
  readonly boards: readonly RackBoard[];
  readonly buy: readonly ToBuy[];
  /** Of what has to be bought; 0 where nothing is or no prices are known. */
  readonly cost: Cents;
  readonly priced: boolean;
  /** Pieces for which nothing in the store is long enough. */
  readonly missing: readonly Needed[];
  /** What a board has to measure for the longest of those: the piece, squaring and blade. */
  readonly longEnough: Mm;
  /** Where one more slip with the longest piece still to be cut finds no wood: the piece, and what saves it. */
  readonly spare: { readonly piece: Needed; readonly board: SpareBoard } | undefined;
};

/** A step by its number, from 1, and its title. */
export type StepAgain = { readonly number: number; readonly title: string };

export type Advice = RackOutcome & {
  readonly fits: Fits;
  readonly piece: Needed;
  readonly left: Mm;
  /** All that is cut from what is left by the boards as they are now, in the order of sawing. */
  readonly serves: readonly Needed[];
  /** How much of it is still there after that. */
  readonly rest: Mm;
  /** Steps that worked on it already, and have to be done again for the new one. */
  readonly again: readonly StepAgain[];
  /** What else still needed could be cut from what is left, each for itself. */
  readonly becomes: readonly Needed[];
};

/**
 * What to do about a spoiled piece; the work is that after it, with this piece as its last change.
 * Undefined where no step of the plan cuts it.
 * Field case F09: the fourth front of 21 in is lost, 17-1/2 in is sound, 11-1/8 in is the offcut: both are
 * too short, and it takes another board.
 */
export function adviceOn(spoiled: SpoiledPiece, bench: Bench): Advice | undefined {
  const row = bench.plan.cutList.find(({ mark }) => mark === spoiled.mark);
  const step = cutStepsOf(bench.plan).find(it => it.step.id === spoiled.step);
  if (row === undefined || step === undefined) return undefined;
  const now = rackNow(step.section, bench);
  if (now === undefined) return undefined;
  const piece = { mark: row.mark, name: row.name, length: row.length.value, count: 1 };
  const isLong = atMost(piece.length, spoiled.left);
  const { left } = spoiled;
  const becomes = left > 0 ? becomesOf(now, bench) : [];
  const again = stepsAgain(row.pieces, bench);
  const fits = isLong ? 'nothing-to-do' : fitOf(now, piece);
  const sound = isLong ? NOTHING_SERVES : soundPart(now, bench);
  return { ...outcomeOf(now, bench), ...sound, fits, piece, left, becomes, again };
}

/** Notches cut in its like before have to be cut in the new one too: the steps that did it. */
export function stepsAgain(pieces: readonly string[], { plan, work }: Bench): readonly StepAgain[] {
  const worked = ({ id }: Step) => work.done.has(id) || (work.tallies.get(id) ?? 0) > 0;
  return plan.steps.flatMap((step, at) =>
    step.phase === 'notch' && worked(step) && step.bright.some(id => pieces.includes(id))
      ? [{ number: at + 1, title: step.title }]
      : [],
  );
}

/** How the boards of a section are cut after one was added; undefined where the plan buys none of it. */
export function adviceOnAdded({ section }: AddedBoards, bench: Bench): RackOutcome | undefined {
  const now = rackNow(section, bench);
  return now === undefined ? undefined : outcomeOf(now, bench);
}

const NOTHING_SERVES: Pick<Advice, 'serves' | 'rest'> = { serves: [], rest: 0 };

/** What the plan takes over from what is left: a sound part may give three pieces, and of several marks. */
function soundPart({ last }: RackNow, { plan }: Bench): Pick<Advice, 'serves' | 'rest'> {
  const sound = last?.soundPart;
  if (last === undefined || sound === undefined) return NOTHING_SERVES;
  const marks = [...new Set(sound.cuts.map(({ mark }) => mark))];
  const serves = marks.flatMap(mark => {
    const row = plan.cutList.find(it => it.mark === mark);
    const count = sound.cuts.filter(cut => cut.mark === mark).length;
    return row === undefined ? [] : [{ mark, name: row.name, length: row.length.value, count }];
  });
  return { serves, rest: fromUnits(roomOn(sound, last.rack)) };
}

function fitOf({ last }: RackNow, piece: Needed): Fits {
  if (last === undefined) return 'on-the-rack';
  if (last.buysMore || last.missing.length > 0) return 'another-board';
  if ((last.soundPart?.cuts.length ?? 0) > 0) return 'serves-elsewhere';
  const givers = last.changed.filter(board => board.cuts.some(({ mark }) => mark === piece.mark));
  const [only] = givers;
  const fromOffcut =
    givers.length === 1 && only !== undefined && isOffcut({ ...only, cuts: only.cuts.slice(1) });
  return last.how === 'beside' && fromOffcut ? 'offcut' : 'on-the-rack';
}

/** The boards of a section as they are, in the words of an answer. */
export function outcomeOf({ rack, last }: RackNow, { plan, work }: Bench): RackOutcome {
  const missing = last?.missing ?? [];
  const longest = Math.max(0, ...missing.map(({ length }) => length));
  return {
    section: rack.section,
    changed: last?.changed ?? [],
    soundPart: last?.soundPart,
    boards: rack.boards,
    buy: longestFirst(moreThan(eachToBuy(rack.boards), [])),
    cost: rack.asked.priced ? (last?.cost ?? 0) : 0,
    priced: rack.asked.priced,
    missing,
    longEnough: longest + rack.trim + rack.kerf,
    spare: spareOf(rack, stillNeeded(plan, rack.section, work)),
  };
}

function spareOf(rack: Rack, needed: readonly Needed[]): RackOutcome['spare'] {
  const [piece] = needed.toSorted((a, b) => b.length - a.length);
  if (piece === undefined || hasRoomFor(piece.length, rack)) return undefined;
  const board = oneBoardMore(rack.asked, piece.length);
  return board === undefined ? undefined : { piece, board };
}

function longestFirst(boards: readonly ToBuy[]): readonly ToBuy[] {
  return boards.toSorted((a, b) => b.length - a.length);
}

/** Pieces still to be cut that the sound part is long enough for, so many of each as it gives. */
function becomesOf({ rack, last }: RackNow, { plan, work }: Bench): readonly Needed[] {
  const sound = last?.soundPart;
  if (sound === undefined) return [];
  return stillNeeded(plan, rack.section, work).flatMap(it => {
    const gives = Math.floor((sound.length + rack.kerf) / (it.length + rack.kerf));
    return gives < 1 ? [] : [{ ...it, count: Math.min(gives, it.count) }];
  });
}
