import { formatMinutes } from '../../../measure/duration.js';
import type { Step } from '../../../plan/plan.js';
import { hanging } from '../../../text/page-lines.js';
import { textWidth } from '../../../text/width.js';
import { cut, padEnd, wrap } from '../../../text/wrap.js';
import { tallyOf } from '../../../workbook/next-step.js';
import { timerWords } from '../../../workbook/timers.js';
import type { Build, Context } from '../../screen.js';
import { factLines, plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { figureRows } from './figure-rows.js';
import { moveWords } from './move-words.js';
import { type Move, nextMove, timerById, wasStarted } from './next-move.js';
import { WHO } from './phase-words.js';

/** The step that is seen, and where. */
export type Work = { readonly step: Step; readonly build: Build; readonly at: Context };

export type Style = {
  readonly columns: number;
  readonly large: boolean;
  /** A blank row between what belongs together and what does not. */
  readonly roomy: boolean;
};

/** A step as rows: the title stays, the body may scroll, the foot says what the big key does now. */
export type WorkRows = {
  readonly head: readonly Row[];
  readonly body: readonly Row[];
  readonly foot: readonly Row[];
  /** Row of the body that is to be seen: the check that comes next. */
  readonly focus: number;
};

export function workRows(work: Work, style: Style): WorkRows {
  const { step, build, at } = work;
  const move = nextMove(step, build, at.nowMs);
  const { columns } = style;
  const checks = checkRows(work, move, columns);
  const before = [
    figureRows({
      big: bigOf(work),
      tally: tallyOf(step, build.progress),
      columns,
      large: style.large,
    }),
    settingRows(work, columns),
    listRows(step.say, work, columns),
    timerRows(work, columns),
  ].filter(rows => rows.length > 0);
  const after = noteRows(work, columns);
  const blocks = [...before, checks.rows, after].filter(rows => rows.length > 0);
  const gap = style.roomy ? [BLANK] : [];
  const body = blocks.flatMap((rows, number) => (number === 0 ? rows : [...gap, ...rows]));
  const above = before.reduce((sum, rows) => sum + rows.length + gap.length, 0);
  return {
    head: [...headRows(work, at.size.columns), ...gap],
    body,
    foot: [...gap, { text: cut(plainer(at.ascii)(moveWords(move)), at.size.columns), tone: 'now' }],
    focus: checks.next === undefined ? 0 : Math.min(body.length - 1, above + checks.next),
  };
}

function bigOf({ step, at }: Work): Step['big'] {
  if (step.big === undefined) return undefined;
  const plain = plainer(at.ascii);
  return { text: plain(step.big.text), caption: plain(step.big.caption) };
}

const LONGEST_TITLE = 2;

/** The title at the left, who does it at the right. */
function headRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const who = WHO[step.who];
  const done = build.progress.done.has(step.id) ? 'DONE: ' : '';
  const title = `${done}${plainer(at.ascii)(step.title)}`;
  const lines = wrap(title, columns - textWidth(who) - 2).slice(0, LONGEST_TITLE);
  return lines.map((line, number) => ({
    text: number === 0 ? `${padEnd(line, columns - textWidth(who))}${who}` : line,
    tone: 'strong',
  }));
}

/** What is large already is not said twice. */
function settingRows({ step, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const settings = step.settings
    .filter(({ text }) => text !== step.big?.text)
    .map(({ name, text }) => ({ name: plain(name), text: plain(text) }));
  return plainRows(factLines(settings, columns));
}

function listRows(items: readonly string[], { at }: Work, columns: number): readonly Row[] {
  return plainRows(items.flatMap(item => hanging('- ', plainer(at.ascii)(item), columns)));
}

/** Timers of this step: still to start, running, up. */
function timerRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return step.timers.flatMap(timer => {
    const running = timerById(timer.id, build);
    const stopped = wasStarted(timer, build)
      ? 'stopped'
      : `${formatMinutes(timer.minutes)}, not started`;
    const words = running === undefined ? stopped : timerWords(running, at.nowMs);
    const text = plainer(at.ascii)(`${timer.name}: ${words}`);
    return hanging('Timer  ', text, columns).map(
      (line): Row => (running === undefined ? { text: line } : { text: line, tone: 'heed' }),
    );
  });
}

type Checks = { readonly rows: readonly Row[]; readonly next: number | undefined };

function checkRows({ step, build, at }: Work, move: Move, columns: number): Checks {
  const done = build.progress.done.has(step.id);
  const rows: Row[] = [];
  let next: number | undefined;
  step.look.forEach((text, number) => {
    const made = done || build.progress.checks.has(`${step.id}#${number}`);
    const isNext = move.kind === 'check' && move.check === number;
    if (isNext) next = rows.length;
    const lines = hanging(`[${made ? 'x' : ' '}] ${number + 1} `, plainer(at.ascii)(text), columns);
    rows.push(
      ...lines.map((line): Row => (isNext ? { text: line, tone: 'strong' } : { text: line })),
    );
  });
  return { rows, next };
}

function noteRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return build.progress.notes
    .filter(note => note.step === step.id)
    .flatMap(({ text }) => plainRows(hanging('Note: ', plainer(at.ascii)(text), columns)));
}
