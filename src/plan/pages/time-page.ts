import { FIRST_TIME } from '../../materials/task-times.js';
import { dayNumber, dayOfNumber, formatDay, weekdayWords } from '../../measure/calendar.js';
import { formatClock } from '../../measure/clock.js';
import { formatMinutes } from '../../measure/duration.js';
import { formatFigure } from '../../measure/figure-text.js';
import type { Minutes } from '../../measure/quantities.js';
import { DAY } from '../../measure/spans.js';
import type { Block, Page } from '../../text/page.js';
import { count } from '../../text/plural.js';
import type { Column } from '../../text/table.js';
import type { Plan, Session, Turn } from '../plan.js';
import { firstWork } from '../session-clock.js';
import { besideTurn } from '../side-by-side.js';
import { isInGarage } from '../step-lasts.js';

/** How long it takes, and each session: who does what side by side, and what stands until the next. */
export function timePage(plan: Plan): Page {
  const { time } = plan;
  return {
    id: 'time',
    title: 'Time',
    blocks: [
      { kind: 'words', text: openingWords(plan) },
      ...(time.trouble === '' ? [] : [{ kind: 'words', text: time.trouble } as const]),
      ...(time.sessions.length === 0
        ? []
        : [{ kind: 'words', text: `${time.finish.because}.` } as const]),
      ...beforeBlocks(plan),
      ...time.sessions.flatMap(session => sessionBlocks(session, plan)),
      { kind: 'words', text: NOT_IN_IT },
    ],
  };
}

const NOT_IN_IT = `Minutes are planning figures for somebody who has done it before; a first build takes ${FIRST_TIME.low} to ${FIRST_TIME.high} times as long (common practice). Waits for glue and sealer are those of a warm day: tell the workbook how warm it is and they follow. Sealing is laid into daylight where your sessions have enough of it. A day that is too cold, too damp or too late for glue or sealer moves those steps.`;

function openingWords({ time, steps, display }: Plan): string {
  const before = steps.reduce((sum, it) => sum + (isInGarage(it) ? 0 : it.minutes.value), 0);
  const sooner = before === 0 ? '' : `, ${formatMinutes(before)} of it before the first session`;
  const work = `About ${formatFigure(time.hands, display)} of work for ${count(time.people, 'person')}${sooner}: ${time.hands.because}.`;
  const last = time.sessions.at(-1);
  if (last === undefined) return work;
  const ends = Math.max(...last.turns.map(({ to }) => to), last.from);
  const day =
    last.date === undefined ? lastOf(time.sessions.length) : ` on ${formatDay(last.date)}`;
  return `${work} It takes ${count(time.sessions.length, 'session')} and is done${day} at about ${formatClock(ends)}.`;
}

/** A clock without a day is that of the last session. */
function lastOf(sessions: number): string {
  return sessions === 1 ? '' : ' in the last of them';
}

export const BEFORE_TITLE = 'Before the first session: at the place and where wood is sold';

/** What is done before anybody stands at the bench: it needs no hours in the garage and is in none of the sessions. */
export function beforeRows(plan: Plan): readonly (readonly string[])[] {
  return plan.steps.flatMap((step, at) =>
    isInGarage(step)
      ? []
      : [
          [
            formatMinutes(step.minutes.value),
            ...whoCell(step.who, plan),
            `${at + 1}. ${step.title}`,
          ],
        ],
  );
}

function beforeBlocks(plan: Plan): readonly Block[] {
  const rows = beforeRows(plan);
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', text: BEFORE_TITLE },
    { kind: 'table', table: { id: 'before', columns: timeColumns('About', plan), rows } },
  ];
}

/** Columns of a table of turns; the first says when or how long. */
export function timeColumns(first: string, { time }: Plan): readonly Column[] {
  return [
    { title: first },
    ...(time.people === 1 ? [] : [{ title: 'Who' }]),
    { title: 'What', grow: true },
  ];
}

function sessionBlocks(session: Session, plan: Plan): readonly Block[] {
  return [
    { kind: 'heading', text: sessionTitle(session) },
    {
      kind: 'table',
      table: {
        id: `session-${session.number}`,
        columns: timeColumns('When', plan),
        rows: session.turns.map(turn => turnCells(turn, plan)),
      },
    },
    { kind: 'list', items: sessionNotes(session, plan) },
  ];
}

/** Coming so much later is worth saying; a judgment of ours. */
const WORTH_COMING_LATER: Minutes = 10;

/** "Session 2, Fri Dec 4, 18:00 to 21:00: about 2 h 40 min"; with "come at 19:41" where nothing can be done before. */
export function sessionTitle(session: Session): string {
  const { number, date, weekday, from, to, minutes } = session;
  const day =
    date === undefined
      ? weekday === undefined
        ? ''
        : `, ${weekdayWords(weekday)}`
      : `, ${formatDay(date)}`;
  const first = firstWork(session);
  const later = first - from < WORTH_COMING_LATER ? '' : `, come at ${formatClock(first)}`;
  return `Session ${number}${day}, ${formatClock(from)} to ${formatClock(to)}${later}: about ${formatMinutes(minutes)}`;
}

const WHO: Readonly<Record<Turn['who'], string>> = {
  lead: 'lead',
  helper: 'helper',
  both: 'together',
};

/** A turn as cells: when, who where there are several, which step. */
export function turnCells(turn: Turn, plan: Plan): readonly string[] {
  const { step, who, from, to, part } = turn;
  const share = part === undefined ? '' : `, part ${part.number} of ${part.of}`;
  return [
    `${formatClock(from)}-${formatClock(to)}`,
    ...whoCell(who, plan),
    `${numbered(step, plan)}${share}`,
  ];
}

function whoCell(who: Turn['who'], { time }: Plan): readonly string[] {
  return time.people === 1 ? [] : [WHO[who]];
}

function numbered(id: string, { steps }: Plan): string {
  const at = steps.findIndex(step => step.id === id);
  return `${at + 1}. ${steps[at]?.title ?? id}`;
}

/** What goes on side by side, and what has to be left alone until when. */
export function sessionNotes(session: Session, plan: Plan): readonly string[] {
  return [...sideWords(session, plan), ...standWords(session)];
}

/** "Side by side from 18:00: lead 19. …, 20. …; helper 21. …", where the helper has work of their own. */
function sideWords(session: Session, plan: Plan): readonly string[] {
  return session.turns.flatMap(helper => {
    const beside = besideTurn(helper, session);
    const [first] = beside;
    if (first === undefined) return [];
    const leads = beside.map(({ step }) => numbered(step, plan)).join(', then ');
    const from = formatClock(Math.max(first.from, helper.from));
    return [`Side by side from ${from}: lead: ${leads} / helper: ${numbered(helper.step, plan)}`];
  });
}

/** What has to be left alone, and until when. */
function standWords({ stands, date }: Session): readonly string[] {
  return stands.map(
    ({ name, until }) => `Stands: ${name.toLowerCase()}, until ${untilWords(until, date)}`,
  );
}

function untilWords(until: Minutes, date: Session['date']): string {
  const days = Math.floor(until / DAY);
  const clock = formatClock(until);
  if (days === 0) return clock;
  if (date !== undefined) return `${formatDay(dayOfNumber(dayNumber(date) + days))} ${clock}`;
  return days === 1 ? `${clock} the next day` : `${clock}, ${count(days, 'day')} later`;
}
