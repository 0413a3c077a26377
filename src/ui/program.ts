import type { Display } from '../measure/quantities.js';
import type { Recipe } from '../recipe/recipe.js';
import { toAscii } from '../text/safe-text.js';
import { textWidth } from '../text/width.js';
import { cut, wrap } from '../text/wrap.js';
import { timerWords } from '../workbook/timers.js';
import { type Alarm, alarmsOf, isRinging } from './alarms.js';
import { isLooking, WORK_HERE } from './looking.js';
import type { Page } from './page.js';
import type { Build, Context, Interview, ShelfLine, Size } from './screen.js';
import type { Look } from './theme.js';

/** Whether what is on the screen is on the disk too. */
export type Saving =
  | { readonly kind: 'nothing-yet' }
  | { readonly kind: 'saved'; readonly atMs: number }
  /** Another window has the build open: nothing is noted here. */
  | { readonly kind: 'looking' }
  | { readonly kind: 'not-saved'; readonly problem: string };

/** Everything the program knows while it runs. Only the session makes a new one. */
export type Program = {
  /** The screens one has come through; the last is the one that is seen. */
  readonly pages: readonly Page[];
  readonly size: Size;
  readonly look: Look;
  readonly display: Display;
  readonly recipes: () => readonly Recipe[];
  readonly shelf: readonly ShelfLine[];
  readonly build: Build | undefined;
  readonly interview: Interview | undefined;
  readonly saving: Saving;
  /** A sentence about the last key, until the next one. */
  readonly notice: string | undefined;
  readonly nowMs: number;
  readonly lastKeyMs: number;
  readonly lastEnterMs: number;
  /** Timers of other builds that somebody has said "heard" to. */
  readonly heard: ReadonlySet<string>;
  /** The build that is looked at, once it was asked to work here: asking again takes it over. */
  readonly held: string | undefined;
  /** Quit was asked for while something was not saved. */
  readonly leaving: boolean;
  /** How often everything had to be painted afresh. */
  readonly paints: number;
};

/** The smallest window with room for a step. */
export const SMALLEST: Size = { columns: 60, rows: 20 };

export function isTooSmall({ columns, rows }: Size): boolean {
  return columns < SMALLEST.columns || rows < SMALLEST.rows;
}

/** Head: the title and the rule under it; a line more for each thing that must be seen. */
const HEAD_ROWS = 2;
/** Foot: a blank row and two rows of keys. */
const FOOT_ROWS = 3;

/** The whole frame: a row less than the window, so that the terminal never scrolls. */
export function frameOf({ columns, rows }: Size): Size {
  return { columns, rows: Math.max(1, rows - 1) };
}

export function alarms({ build, shelf, heard }: Program): readonly Alarm[] {
  return alarmsOf(build, shelf, heard);
}

/** A row that has to be seen on every screen, and the key that answers it. */
export type UrgentLine = { readonly text: string; readonly key: string };

/** More rows than this of one message would push the work off a small window. */
const MOST_ROWS = 3;
const HEARD = '[tab] heard';
const LOOKING = 'LOOKING ONLY: open in another window';

/** Not saved, a notice, timers that ring: what to do stands at the end, so long ones are wrapped. */
export function urgentLines(program: Program): readonly UrgentLine[] {
  const { saving, notice, nowMs } = program;
  const lines: UrgentLine[] = [];
  if (saving.kind === 'not-saved') {
    const text = `NOT SAVED: ${saving.problem}. Kept here, and tried again at each key.`;
    lines.push(...wrapped(program, text, ''));
  }
  if (saving.kind === 'looking') {
    lines.push(...wrapped(program, LOOKING, `[${WORK_HERE}] work here`));
  }
  if (notice !== undefined) lines.push(...wrapped(program, notice, ''));
  const rings = alarms(program).filter(alarm => isRinging(alarm, nowMs));
  const [first] = rings;
  if (first !== undefined) {
    lines.push(...wrapped(program, ringText(first, { count: rings.length, nowMs }), HEARD));
  }
  return lines;
}

/** The key stands beside the first row; its column stays free beside the others. */
function wrapped({ look, size }: Program, text: string, key: string): readonly UrgentLine[] {
  const room = size.columns - (key === '' ? 0 : textWidth(key) + 2);
  const rows = wrap(look.ascii ? toAscii(text) : text, room);
  const [last = '', ...over] = rows.slice(MOST_ROWS - 1);
  const shown = [
    ...rows.slice(0, MOST_ROWS - 1),
    over.length > 0 ? cut(`${last} ${over[0]}`, room) : last,
  ];
  return shown
    .filter(row => row !== '')
    .map((row, number) => ({ text: row, key: number === 0 ? key : '' }));
}

type Ringing = { readonly count: number; readonly nowMs: number };

function ringText({ timer, elsewhere }: Alarm, { count, nowMs }: Ringing): string {
  const whose = elsewhere === undefined ? timer.name : `${elsewhere}, ${timer.name}`;
  const more = count > 1 ? ` (and ${count - 1} more)` : '';
  return `TIME IS UP: ${whose}${more}, ${timerWords(timer, nowMs)}. ${timer.then}`.trimEnd();
}

export function contextOf(program: Program): Context {
  const { display, look, nowMs, recipes, shelf, build, interview } = program;
  const frame = frameOf(program.size);
  const rows = frame.rows - HEAD_ROWS - FOOT_ROWS - urgentLines(program).length;
  const bare: Context = {
    size: { columns: frame.columns, rows },
    nowMs,
    display,
    ascii: look.ascii,
    recipes,
    shelf,
    build,
    looking: isLooking(program),
    interview,
    stepSeen: undefined,
    under: undefined,
  };
  const stepSeen = program.pages.map(page => page.stepSeen(bare)).findLast(id => id !== undefined);
  const context = { ...bare, stepSeen };
  const under = program.pages.at(-2);
  if (under === undefined) return context;
  return { ...context, under: { title: under.title(context), hints: under.hints(context) } };
}
