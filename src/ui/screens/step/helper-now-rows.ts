import { wrap } from '../../../text/wrap.js';
import { tallyOf } from '../../../workbook/next-step.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { checkRows } from './check-rows.js';
import { bigNow, figureRows } from './figure-rows.js';
import { moveWords } from './move-words.js';
import { nextMove } from './next-move.js';
import { againRows, notesWhole } from './said-blocks.js';
import { notTodayRows, timerRows } from './timer-rows.js';
import type { Work } from './work-rows.js';

/** What comes before any work: what the lead tells, or a wait. */
export function firstRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const move = nextMove(step, build, at.nowMs);
  const told = 'First the lead tells you about it: touch nothing before that.';
  const words = move.kind === 'brief' ? told : move.kind === 'wait' ? moveWords(move) : '';
  if (words === '') return [];
  return wrap(plainer(at.ascii)(words), columns).map((text): Row => ({ text, tone: 'heed' }));
}

/** The figure and the count, what is to be cut again, the day and the timers. */
export function nowRows(work: Work, columns: number): readonly Row[] {
  const { step, build, at } = work;
  const plain = plainer(at.ascii);
  const big = bigNow(step, build);
  return [
    ...notTodayRows(work, columns),
    ...figureRows({
      big: big && { text: plain(big.text), caption: plain(big.caption) },
      tally: tallyOf(step, build.progress),
      columns,
      large: false,
    }),
    ...againRows(work, columns),
    ...timerRows(work, columns),
  ];
}

/** The checks with their numbers, the next one marked, and what was noted. */
export function lookRows(work: Work, columns: number): readonly Row[] {
  const { step, build, at } = work;
  const move = nextMove(step, build, at.nowMs);
  return [...checkRows(work, move, columns).rows, ...notesWhole(work, columns)];
}
