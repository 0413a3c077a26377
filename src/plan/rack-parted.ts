import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { toUnits } from '../measure/round.js';
import { lessThan } from '../measure/tolerance.js';
import { boardName, type Rack, type RackBoard } from './rack.js';
import { roomOn, withCut } from './rack-room.js';
import type { SpoiledBoard } from './work-so-far.js';

/** Where a board is bad, from the end that is cut first. */
export type Bad = { readonly from: Mm; readonly to: Mm };

/** Less than this is no board any more; a judgment of ours. */
const WORTH_NAMING: Mm = inches(2);

/**
 * The rack with one board parted where it is bad. Its cuts stay on it as far as its sound stretches hold them,
 * longest first; the others have no place any more. The stretch beyond begins in the bad part, so its first
 * cut takes nothing of it. 96 in, bad from 30 to 38 in, is 30 in with an end to square and 58 in without.
 * A place that the rack does not have changes nothing.
 */
export function partedRack(rack: Rack, place: number, bad: Bad, display: Display): Rack {
  const board = rack.boards[place];
  if (board === undefined) return rack;
  const stretches = soundOf(board, bad, display);
  const longestFirst = board.cuts.toSorted((a, b) => b.length - a.length);
  const filled = longestFirst.reduce((now, cut) => {
    const at = now.findIndex(it => roomOn(it, rack) >= toUnits(cut.length, 'up'));
    return now.map((it, number) => (number === at ? withCut(it, cut, rack) : it));
  }, stretches);
  const lost = stretches.length === 0 ? [...rack.lost, board] : rack.lost;
  return { ...rack, boards: rack.boards.toSpliced(place, 1, ...filled), lost };
}

/**
 * Where the board lies that turned out bad. A length that was measured since may have put boards of the plan before
 * it, or brought it into the plan: then it is the nearest one of its name, and where none has it, what lies in its place.
 */
export function placeOf(
  { place, board }: Pick<SpoiledBoard, 'place' | 'board'>,
  { boards }: Pick<Rack, 'boards'>,
): number {
  const name = bareName(board);
  const named = boards.flatMap((it, at) => (bareName(boardName(it)) === name ? [at] : []));
  const nearest = Math.min(...named.map(at => Math.abs(at - place)));
  return named.find(at => Math.abs(at - place) === nearest) ?? place;
}

/** The same for a board that is begun by now and one that is not: `the rest of board 3` is `board 3`. */
function bareName(name: string): string {
  return name.replace(/^the rest of /, '').replace(/^(?:a|the) /, '');
}

/** What is sound of a board, nothing planned on it; a bit of less than 2 in is left out. It was paid for once. */
export function soundOf(board: RackBoard, bad: Bad, display: Display): readonly RackBoard[] {
  const length = (mm: Mm) => formatLength(mm, display);
  const before = board.stretch === undefined ? '' : `${board.stretch}, `;
  const near: RackBoard = {
    ...board,
    stretch: `${before}up to ${length(bad.from)}`,
    length: Math.max(0, Math.min(bad.from, board.length)),
    cuts: [],
  };
  const far: RackBoard = {
    ...board,
    stretch: `${before}beyond ${length(bad.to)}`,
    kind: 'stretch',
    length: Math.max(0, board.length - bad.to),
    cuts: [],
  };
  const sound = [near, far].filter(it => !lessThan(it.length, WORTH_NAMING));
  return sound.map(({ bought, ...it }, at) =>
    at === 0 && bought !== undefined ? { ...it, bought } : it,
  );
}
