import { formatMinutes } from '../../../measure/duration.js';
import { count } from '../../../text/plural.js';
import { cut } from '../../../text/wrap.js';
import type { Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import type { Move } from './next-move.js';

/** What the big key does now, in one line. */
export function moveWords(move: Move): string {
  switch (move.kind) {
    case 'brief':
      return 'Space: it was read aloud and understood';
    case 'count': {
      const { done, count: all, of } = move.tally;
      return `Space: one more, ${done + 1} of ${count(all, of)}`;
    }
    case 'check':
      return `Space: check ${move.check + 1} is right`;
    case 'start-timer':
      return `Space: start the timer, ${formatMinutes(move.timer.minutes)}: ${move.timer.name}`;
    case 'wait':
      return move.begins
        ? `Wait for "${move.timer.name}" before this step`
        : `Wait for "${move.timer.name}". Then: ${move.timer.then}`;
    case 'finish':
      return 'Space: done, next step';
    case 'go-on':
      return 'Space: on to the next step';
  }
}

/** The same as the last row of the screen. */
export function moveRow(move: Move, { size, ascii }: Context): Row {
  return { text: cut(plainer(ascii)(moveWords(move)), size.columns), tone: 'now' };
}
