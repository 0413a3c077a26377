import { toAscii } from '../text/safe-text.js';
import { textWidth } from '../text/width.js';
import { cut, padEnd } from '../text/wrap.js';
import { clockWords } from '../workbook/clock-words.js';
import { timerWords } from '../workbook/timers.js';
import { type Alarm, isRinging } from './alarms.js';
import { alarms, type Program } from './program.js';
import { marks } from './theme.js';

/** The title at the left, the build's name at the right: a line as wide as the frame. */
export function titleLine(title: string, name: string, width: number): string {
  const room = Math.max(0, width - textWidth(title) - 2);
  const right = cut(name, room);
  return cut(padEnd(title, width - textWidth(right)) + right, width);
}

/** The line under the title, with the nearest timer and the state of saving set into it. */
export function statusLine(program: Program, width: number): string {
  const { rule } = marks(program.look.ascii);
  const status = statusParts(program, Math.max(LEAST_NAME, width - 48));
  const most = Math.max(40, width - 28);
  const words = status.map(text => ` ${cut(text, most)} ${rule.repeat(2)}`).join('');
  const line = rule.repeat(Math.max(0, width - textWidth(words))) + words;
  return cut(program.look.ascii ? toAscii(line) : line, width);
}

/** The same for who listens: without the line. Empty where there is nothing to tell. */
export function statusTold(program: Program): string {
  return statusParts(program, Number.POSITIVE_INFINITY).join('. ');
}

function statusParts(program: Program, nameWidth: number): readonly string[] {
  return [timerStatus(program, nameWidth), savingStatus(program)].filter(text => text !== '');
}

/** What the window is called while this shows. */
export function windowTitle(program: Program): string {
  const parts = [timerStatus(program, LEAST_NAME), program.build?.workbook.name ?? '', 'Notchbook'];
  return parts.filter(text => text !== '').join(' - ');
}

/** What a timer's name keeps however narrow the window is. */
const LEAST_NAME = 24;

function timerStatus(program: Program, nameWidth: number): string {
  const { nowMs } = program;
  const rings = alarms(program).filter(alarm => isRinging(alarm, nowMs));
  if (rings.length > 0) return 'TIME IS UP';
  const all = alarms(program);
  const nearest = all.find(({ elsewhere }) => elsewhere === undefined) ?? all[0];
  if (nearest === undefined) return '';
  const more = all.length > 1 ? ` +${all.length - 1}` : '';
  return `${cut(whose(nearest), nameWidth)}: ${timerWords(nearest.timer, nowMs)}${more}`;
}

/** One's own clamps by their name; those of another build by its name, or they would be opened too early. */
function whose({ timer, elsewhere }: Alarm): string {
  return elsewhere ?? timer.name;
}

function savingStatus({ saving, nowMs }: Program): string {
  switch (saving.kind) {
    case 'nothing-yet':
      return '';
    case 'saved':
      return `saved ${clockWords(saving.atMs, nowMs)}`;
    case 'looking':
      return 'looking only';
    case 'not-saved':
      return 'NOT SAVED';
  }
}
