import { type CalendarDay, dayNumber } from '../measure/calendar.js';
import type { Minutes } from '../measure/quantities.js';
import { DAY, MINUTE_MS } from '../measure/spans.js';
import { layWork } from '../plan/lay-work.js';
import type { Plan, Session } from '../plan/plan.js';
import { sessionDays } from '../plan/session-days.js';
import { settingOf } from '../plan/setting.js';
import { isInGarage } from '../plan/step-lasts.js';
import type { Work } from '../plan/work-pieces.js';
import { calendarDay, clockMinutes } from './clock-words.js';
import { tallyOf } from './next-step.js';
import { type Pace, paceOf } from './pace.js';
import { endsAtMs } from './timers.js';
import type { Progress, Workbook } from './workbook.js';

/** More days than this are not looked at; a judgment of ours. */
const MOST_DAYS = 60;

export type Forecast = {
  readonly day: CalendarDay;
  readonly clock: Minutes;
  /** What is still to be done, laid into the hours from now on. */
  readonly sessions: readonly Session[];
  readonly pace: Pace;
};

export type UnderWay = {
  readonly workbook: Workbook;
  readonly plan: Plan;
  readonly progress: Progress;
};

/**
 * When it will likely be done: the steps that are left, as long as they take at the pace of those that are done, in
 * the hours that somebody has from now on, waits that run counted. None when all is done or no hours are left.
 */
export function forecast(
  { workbook, plan, progress }: UnderWay,
  nowMs: number,
  zone?: string,
): Forecast | undefined {
  const setting = settingOf(workbook.answers, workbook.display);
  const { sessions: habit } = setting;
  const pace = paceOf(workbook.events, plan.steps, progress.done, plan.time.sessions);
  const today = calendarDay(nowMs, zone);
  const firstDay = habit.firstDay !== undefined && habit.firstDay > today ? habit.firstDay : today;
  const clock = clockMinutes(nowMs, zone);
  const days = sessionDays({ ...habit, firstDay }, MOST_DAYS).flatMap(day => {
    if (day.date !== today) return [day];
    return clock + 1 < day.to ? [{ ...day, from: Math.max(day.from, clock) }] : [];
  });
  const [first] = days;
  if (first?.date === undefined) return undefined;
  const ahead = (dayNumber(first.date) - dayNumber(today)) * DAY;
  const frame = days.map(day => ({ ...day, daysOn: day.daysOn - first.daysOn }));
  const minuteOf = (atMs: number) => clock - ahead + Math.ceil((atMs - nowMs) / MINUTE_MS);
  const work = workLeft({ plan, progress, pace, minuteOf });
  if (work.length === 0) return undefined;
  const laid = layWork(work, frame, setting);
  const last = laid.ok ? laid.sessions.at(-1) : undefined;
  if (!laid.ok || last?.date === undefined) return undefined;
  const ends = Math.max(...last.turns.map(({ to }) => to));
  return { day: last.date, clock: ends, sessions: laid.sessions, pace };
}

type Left = Pick<UnderWay, 'plan' | 'progress'> & {
  readonly pace: Pace;
  /** A moment in minutes since midnight of the first day. */
  readonly minuteOf: (atMs: number) => Minutes;
};

function workLeft({ plan: { steps }, progress, pace, minuteOf }: Left): readonly Work[] {
  return steps
    .filter(step => isInGarage(step) && !progress.done.has(step.id))
    .map(step => {
      const tally = tallyOf(step, progress);
      const pieces = tally === undefined ? 1 : Math.max(1, tally.count - tally.done);
      const share = tally === undefined ? 1 : pieces / Math.max(1, tally.count);
      const waits = progress.timers.filter(({ id }) => step.after.includes(id));
      return {
        step,
        pieces,
        minutes: step.minutes.value * share * pace.of(step.phase),
        from: Math.max(0, ...waits.map(timer => minuteOf(endsAtMs(timer)))),
      };
    });
}
