import type { Mm } from '../measure/quantities.js';
import { fromUnits } from '../measure/round.js';
import { stepsAgain } from './advice.js';
import { boardLines } from './board-lines.js';
import { boardsNamed, type NamedBoard, numbered } from './boards-named.js';
import { markLine } from './cut-steps.js';
import type { Step, StepSetting } from './plan.js';
import { boardName, type Rack, type RackBoard } from './rack.js';
import { type Bench, rackNow } from './rack-now.js';
import { slackOn } from './rack-room.js';
import { type CutStep, cutStepsOf, goodPieces, marksInOrder } from './work-so-far.js';

/**
 * The settings of a step that cuts boards, once something happened to the boards of its section, a measured length asks
 * for one more, or they are cut out of turn: which board each piece still to be cut comes from by the boards as they are now, and how much of
 * each may be skipped. As the plan has them for any other step.
 */
export function settingsNow(step: Step, bench: Bench): readonly StepSetting[] {
  const found = cuttingNow(step, bench);
  if (found === undefined) return step.settings;
  const { cutting, rack } = found;
  const open = marksInOrder(cutting, bench.work).slice(goodPieces(cutting, bench.work));
  const taken = [...new Set(cutting.rows)].map(row => {
    const left = open.filter(mark => mark === row.mark).length;
    const count = cutting.rows.filter(it => it === row).length;
    return { row, count, left, from: givers(row.mark, left, rack.boards) };
  });
  const marks = taken.map(({ row, from, ...counts }) =>
    markLine(row, {
      ...counts,
      from: from.map(it => ({ count: it.count, ...benchNamed(it.board) })),
    }),
  );
  const used = rack.boards.filter(board =>
    taken.some(it => it.from.some(at => at.board === board)),
  );
  const kept = step.settings.filter(({ boards }) => boards !== true);
  return [
    ...kept,
    ...marks,
    ...rackLines(used, new Set(taken.map(it => it.row.mark)), { rack, bench }),
  ];
}

/**
 * Where the new ones of spoiled pieces come from, by the boards as they are now: `1 x B, cut last: from board 4`. They
 * are the last of their mark, so the last boards that give it give them. What was cut into the spoiled ones is told too.
 */
export function againFrom(
  { mark, count }: { readonly mark: string; readonly count: number },
  step: Step,
  bench: Bench,
): string {
  const again = `${count} x ${mark}, cut last`;
  const found = cuttingNow(step, bench);
  if (found === undefined) return `${again}.`;
  const { cutting, rack } = found;
  const last = givers(mark, count, rack.boards.toReversed()).toReversed();
  if (last.length === 0) return `${again}: no board is left for it.`;
  const boards = boardsNamed(last.map(({ board }) => benchNamed(board)));
  const pieces = cutting.rows.find(row => row.mark === mark)?.pieces ?? [];
  const then = stepsAgain(pieces, bench).map(it => ` Then again step ${it.number}, ${it.title}.`);
  return `${again}: from ${boards}.${then.join('')}`;
}

/** The board that the piece comes from that is cut next: `board 4`. Nothing where all boards are as planned. */
export function nextFrom(step: Step, bench: Bench): string | undefined {
  const found = cuttingNow(step, bench);
  if (found === undefined) return undefined;
  const { cutting, rack } = found;
  const mark = marksInOrder(cutting, bench.work)[goodPieces(cutting, bench.work)];
  const [next] = mark === undefined ? [] : givers(mark, 1, rack.boards);
  return next && benchNamed(next.board).name;
}

type CuttingNow = { readonly cutting: CutStep; readonly rack: Rack };

/** A step that cuts, with the boards of its section; nothing where all boards are as planned. */
function cuttingNow(step: Step, bench: Bench): CuttingNow | undefined {
  const steps = cutStepsOf(bench.plan);
  const cutting = steps.find(it => it.step.id === step.id);
  if (cutting === undefined) return undefined;
  const { section } = cutting;
  const own = steps.filter(it => it.section === section);
  if (isAsBought(section, bench) && isCutInOrder(own, bench.work)) return undefined;
  const rack = rackNow(section, bench)?.rack;
  return rack && { cutting, rack };
}

/** The boards of the plan are the ones that lie there: none is lost, none came, none is still to be bought. */
function isAsBought(section: string, { plan, work }: Bench): boolean {
  const boards = plan.purchases.find(it => it.section === section)?.boards ?? [];
  return (
    boards.every(({ besides }) => besides === undefined) &&
    !work.rackChanges.some(change => change.section === section)
  );
}

/**
 * No step of a section is begun before those ahead of it are through. Out of turn, as where an older program told
 * another order, what is left to hold at a stop is not what the plan says.
 */
function isCutInOrder(steps: readonly CutStep[], work: Bench['work']): boolean {
  const open = steps.findIndex(it => goodPieces(it, work) < it.rows.length);
  return open < 0 || steps.slice(open + 1).every(it => goodPieces(it, work) === 0);
}

type Giver = { readonly board: RackBoard; readonly count: number };

/** The boards that give so many pieces of a mark, in the order in which they stand there. */
function givers(mark: string, wanted: number, boards: readonly RackBoard[]): readonly Giver[] {
  let left = wanted;
  return boards.flatMap(board => {
    const count = Math.min(left, board.cuts.filter(cut => cut.mark === mark).length);
    left -= count;
    return count === 0 ? [] : [{ board, count }];
  });
}

function rackLines(
  used: readonly RackBoard[],
  marks: ReadonlySet<string>,
  { rack, bench }: { readonly rack: Rack; readonly bench: Bench },
): readonly StepSetting[] {
  const { display } = bench.setting;
  const { kerf } = rack;
  const boards = used.map(board => {
    const slack: Mm = fromUnits(slackOn(board, rack));
    return { ...benchNamed(board), slack, cuts: board.cuts, left: Math.max(0, slack - kerf) };
  });
  return boardLines(boards, marks, { kerf, display });
}

/** A board as the stops call it: `board 3`, `the rest of board 3`, `board 4 up to 40 in`, `a new 8 ft board (to buy)`. */
function benchNamed(board: RackBoard): NamedBoard {
  const { number, kind, stretch } = board;
  const bare = number === undefined ? board.name : numbered(number).name;
  const whole = boardName({ name: bare, kind });
  if (number !== undefined && whole === bare && stretch === undefined) return numbered(number);
  const where = stretch === undefined ? whole : `${whole} ${stretch}`;
  return { name: kind === 'to-buy' ? `${where} (to buy)` : where };
}
