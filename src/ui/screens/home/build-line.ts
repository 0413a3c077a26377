import { cut, padEnd } from '../../../text/wrap.js';
import { clockWords } from '../../../workbook/clock-words.js';
import type { ShelfLine } from '../../screen.js';

/** A build in one line: its name, how far it is, what comes next, or why it can't be opened. */
export function buildLine(line: ShelfLine, width: number): string {
  const called = line.putAway ? `(put away) ${line.name}` : line.name;
  const name = padEnd(cut(called, NAME), NAME);
  return cut(`${name}  ${standing(line)}`, width);
}

const NAME = 24;

function standing({ trouble, begun, stepsDone, stepsInAll, next }: ShelfLine): string {
  if (trouble !== undefined) return `can't be opened: ${trouble}`;
  if (stepsInAll > 0 && stepsDone >= stepsInAll) return 'finished';
  const steps = `${stepsDone} of ${stepsInAll} steps`;
  const far = stepsDone > 0 ? steps : begun ? `begun, ${steps}` : 'not begun';
  return next === undefined ? far : `${padEnd(far, 14)}  next: ${next}`;
}

/** The timers of all builds, one line each, the first to end in front. */
export function timerLines(shelf: readonly ShelfLine[], nowMs: number): readonly string[] {
  return shelf
    .flatMap(({ name, timers }) => timers.map(timer => ({ ...timer, build: name })))
    .sort((one, other) => one.endsAtMs - other.endsAtMs)
    .map(({ name, build, endsAtMs }) => {
      const when = clockWords(endsAtMs, nowMs);
      const ends = endsAtMs <= nowMs ? `ready since ${when}` : `ready ${when}`;
      return `${build}, ${name}: ${ends}`;
    });
}
