import { formatMinutes } from '../../../measure/duration.js';
import { nextFrom } from '../../../plan/cut-step-now.js';
import { nextMark } from '../../../plan/piece-mark.js';
import { cutStepsOf } from '../../../plan/work-so-far.js';
import { count } from '../../../text/plural.js';
import { textWidth } from '../../../text/width.js';
import { cut } from '../../../text/wrap.js';
import { benchOf } from '../../bench-of.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import type { BriefingPage } from './briefing-pages.js';
import { asksForFirst, type Move } from './next-move.js';
import type { Work } from './work-rows.js';

/** What the big key does now, in one line. */
export function moveWords(move: Move): string {
  switch (move.kind) {
    case 'brief':
      return BRIEFED[move.page.kind];
    case 'count': {
      const { done, count: all, of } = move.tally;
      return `Space: one more, ${done + 1} of ${count(all, of)}`;
    }
    case 'check':
      return `Space: check ${move.check + 1} is right`;
    case 'measure-first':
      return 'Space: the stop is moved and one is cut: enter what it measures';
    case 'start-timer':
      if (move.timer.lasts === 'glue-open')
        return `Space at the first stroke: ${move.timer.name.replace('Open time', `open time ${move.timer.minutes} min`)}`;
      return `Space: start the timer, ${formatMinutes(move.timer.minutes)}: ${move.timer.name}`;
    case 'wait':
      return move.begins
        ? `Wait for "${move.timer.name}" before this step`
        : `Wait for "${move.timer.name}". Then: ${move.timer.then}`;
    case 'tell-day':
      return `Space: say what the day is like, before the ${move.work === 'glue' ? 'glue' : 'sealer'} is opened`;
    case 'not-today':
      return 'Space: what can be done instead   (y: tell the day anew)';
    case 'finish':
      return 'Space: done, next step';
    case 'go-on':
      return 'Space: on to the next step';
  }
}

const BRIEFED: Readonly<Record<BriefingPage['kind'], string>> = {
  read: 'Space: it was read aloud and understood',
  heed: 'Space: it was read aloud and understood',
  ask: 'Space: answered well, signed off   (c: read once more)',
  tell: 'Space: answered well, signed off',
  refresh: 'Space: answered well, signed off   (c: read all of it)',
};

/** What is written on the piece under the saw, and after a slip its board; how the first one is entered. */
function besideWords(move: Move, { step, build }: Work): string {
  const waits = move.kind === 'check' && asksForFirst(move, step);
  if (move.kind !== 'count' && !waits) return '';
  const cutting = cutStepsOf(build.plan).find(it => it.step.id === step.id);
  if (cutting === undefined) return '';
  if (waits) return '   (s: enter what it measures)';
  const mark = nextMark(cutting, build.progress);
  const from = nextFrom(step, benchOf(build));
  return mark === undefined ? '' : `, marked ${mark}${from === undefined ? '' : `, from ${from}`}`;
}

/** What a row needs beside the words: where in a long step one is. */
const POSITION = 20;

/** The same as the last row of the screen; what comes after a wait is left out where it would be cut. */
export function moveRow(move: Move, work: Work): Row {
  const { size, ascii } = work.at;
  const full = plainer(ascii)(`${moveWords(move)}${besideWords(move, work)}`);
  const short = move.kind === 'wait' && textWidth(full) > size.columns - POSITION;
  const words = short ? plainer(ascii)(`Wait for "${move.timer.name}"`) : full;
  return { text: cut(words, size.columns), tone: 'now' };
}
