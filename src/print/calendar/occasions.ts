import { type CalendarDay, dayNumber, dayOfNumber } from '../../measure/calendar.js';
import { formatMinutes } from '../../measure/duration.js';
import type { Plan, Session } from '../../plan/plan.js';
import { firstWork } from '../../plan/session-clock.js';
import { calendarDay } from '../../workbook/clock-words.js';
import { handedOverAtMs, SETTLED_DAYS, sealedAtMs } from '../../workbook/hand-over.js';
import { endsAtMs, isUp } from '../../workbook/timers.js';
import type { BuildSoFar } from '../pages/pack.js';
import type { Occasion } from './ics-text.js';

const HOUR_MINUTES = 60;
const DAY_MINUTES = 24 * HOUR_MINUTES;

export type Dated = {
  readonly plan: Plan;
  readonly build: BuildSoFar | undefined;
  readonly madeAtMs: number;
  /** How the files of this plan are called: begins the names that calendars know occasions by. */
  readonly base: string;
};

/** Everything with a date: sessions, waits that end on another day, timers that run, care. */
export function occasions(dated: Dated): readonly Occasion[] {
  return [
    ...dated.plan.time.sessions.flatMap(session => sessionOccasions(session, dated)),
    ...timerOccasions(dated),
    ...careOccasions(dated),
  ];
}

function uid({ base, build }: Dated, what: string): string {
  const begun = build === undefined ? '' : `-${build.workbook.createdAtMs}`;
  return `${base}${begun}-${what}@notchbook`;
}

function sessionOccasions(session: Session, dated: Dated): readonly Occasion[] {
  const { date, number, minutes, stands } = session;
  const from = firstWork(session);
  const { plan, build } = dated;
  if (date === undefined) return [];
  const steps = session.steps.flatMap(id => plan.steps.find(step => step.id === id) ?? []);
  const open = steps.filter(({ id }) => build?.progress.done.has(id) !== true);
  if (open.length === 0) return [];
  const ends = session.endsWith === '' ? [] : [`Ends with ${session.endsWith}.`];
  return [
    {
      uid: uid(dated, `session-${number}`),
      title: `${plan.title}, session ${number}`,
      about: [`About ${formatMinutes(minutes)}.`, ...open.map(({ title }) => title), ...ends].join(
        '\n',
      ),
      from: { kind: 'clock', day: date, minutes: from },
      to: { kind: 'clock', day: date, minutes: from + minutes },
      ringsBefore: HOUR_MINUTES,
    },
    ...stands
      .filter(({ until }) => until >= DAY_MINUTES)
      .map(
        ({ timer, name, until }): Occasion => ({
          uid: uid(dated, `wait-${number}-${timer.replace(/[^a-z0-9]+/gi, '-')}`),
          title: `${name}: over`,
          about: `Begun in session ${number} of ${plan.title}.`,
          from: { kind: 'clock', day: date, minutes: until },
          ringsBefore: 0,
        }),
      ),
  ];
}

/** Timers that run now, at the instant at which they ring. */
function timerOccasions(dated: Dated): readonly Occasion[] {
  const { build, madeAtMs } = dated;
  const timers = build?.progress.timers.filter(timer => !isUp(timer, madeAtMs)) ?? [];
  return timers.map(timer => ({
    uid: uid(dated, `timer-${timer.startedAtMs}`),
    title: `${timer.name}: over`,
    about: timer.then,
    from: { kind: 'instant', atMs: endsAtMs(timer) },
    ringsBefore: 0,
  }));
}

/** A day on which most of the north has spring; the owner moves it where it is not. */
const SPRING = '04-01';

/** Care, counted from the hand-over or, before it, from the last day of the plan. */
function careOccasions(dated: Dated): readonly Occasion[] {
  const { plan } = dated;
  const over = handOverDay(dated);
  if (over === undefined) return [];
  const year = Number(over.slice(0, 4));
  const spring = over < `${year}-${SPRING}` ? `${year}-${SPRING}` : `${year + 1}-${SPRING}`;
  const day = (what: string, on: CalendarDay, title: string, about: string): Occasion => ({
    uid: uid(dated, what),
    title: `${plan.title}: ${title}`,
    about,
    from: { kind: 'day', day: on },
    ringsBefore: 0,
  });
  return [
    day(
      'tighten',
      dayOfNumber(dayNumber(over) + SETTLED_DAYS),
      'tighten every screw by hand',
      'New wood settles and dries in its first weeks.',
    ),
    {
      ...day(
        'spring',
        spring,
        'look it over',
        'Screws, water that no longer stands in beads, rot near the ground, what moves. The care sheet says all of it. Move this day where spring is at another time of the year.',
      ),
      everyYear: true,
    },
    day(
      'seal',
      sealAgainDay(dated, over),
      'try it with water, seal again where it soaks in',
      `A coat of ${plan.sealer.kind} usually lasts ${plan.sealer.lasts.from} to ${plan.sealer.lasts.to} years outdoors; sun and rain decide.`,
    ),
  ];
}

function handOverDay({ build, plan }: Dated): CalendarDay | undefined {
  const at = build === undefined ? undefined : handedOverAtMs(build.workbook.events, plan);
  return at === undefined ? plan.time.sessions.at(-1)?.date : calendarDay(at);
}

/** Counted as the care sheet does: from the last coat, and where none is known from the hand-over. */
function sealAgainDay({ build, plan }: Dated, over: CalendarDay): CalendarDay {
  const at = build === undefined ? undefined : sealedAtMs(build.workbook.events, plan);
  const from = at === undefined ? over : calendarDay(at);
  const year = Number(from.slice(0, 4)) + plan.sealer.lasts.from;
  return `${year}${from.slice(4)}`.replace(/-02-29$/, '-03-01');
}
