import { formatMinutes } from '../measure/duration.js';
import type { Minutes } from '../measure/quantities.js';
import { DAY } from '../measure/spans.js';
import { checkSchedule } from '../solve/schedule/check-schedule.js';
import { planSchedule } from '../solve/schedule/plan-schedule.js';
import type { Found, Schedule, ScheduleProblem } from '../solve/schedule/problem.js';
import type { Session, Step, Turn } from './plan.js';
import { sealHours } from './seal-hours.js';
import type { SessionDay } from './session-days.js';
import type { SessionHabit, Setting } from './setting.js';
import { STOOD_OUT } from './step-lasts.js';
import { type Longest, type Piece, piecesOf, tasksOf, type Work, waitsOf } from './work-pieces.js';

/** Those who are there, and when the saws rest. */
export type LaidFor = Pick<Setting, 'people' | 'helper'> & {
  readonly sessions: Pick<SessionHabit, 'noiseUntil'>;
};

export type LaidOut = {
  readonly ok: true;
  readonly sessions: readonly Session[];
  readonly schedule: Schedule;
  /** Sealing is kept to the hours that suit it; else no hours that somebody has do. */
  readonly sealed: 'fair' | 'any-hour';
};

/** The work laid into sessions, with what the search says about it; or why it can't be. */
export type Laid =
  | LaidOut
  | { readonly ok: false; readonly why: 'no-loud-hour' | 'few-loud-hours' | 'too-few-days' };

/** Work for the hours of these days, the shortest that is found: minutes run from midnight of the first day. */
export function layWork(work: readonly Work[], days: readonly SessionDay[], crew: LaidFor): Laid {
  const { problem, pieces } = workProblem(work, days, crew);
  const noLoudHour = problem.sessions.every(({ from, quietFrom }) => quietFrom <= from);
  if (noLoudHour && problem.tasks.some(({ loud }) => loud))
    return { ok: false, why: 'no-loud-hour' };
  const fair = hasFairHours(problem) ? planSchedule(problem) : NOT_FOUND;
  const found = fair.ok ? fair : planSchedule(atAnyHour(problem));
  if (!found.ok) return { ok: false, why: loudFits(problem) ? 'too-few-days' : 'few-loud-hours' };
  const { schedule } = found;
  const wrong = checkSchedule(fair.ok ? problem : atAnyHour(problem), schedule);
  if (wrong.length > 0) throw new Error(`a time plan does not add up: ${wrong.join('; ')}`);
  const sealed = fair.ok ? 'fair' : 'any-hour';
  return { ok: true, schedule, sessions: sessionsOf(schedule, pieces, days), sealed };
}

const NOT_FOUND: Found = { ok: false };

/** Whether each piece of sealing has a session whose fair hours hold it: else no order has to be searched for it. */
function hasFairHours({ tasks, sessions }: ScheduleProblem): boolean {
  const longest = Math.max(0, ...sessions.map(({ fair }) => (fair ? fair.to - fair.from : 0)));
  return tasks.every(({ fair, minutes }) => fair !== true || minutes <= longest);
}

/** Whether the hours before the quiet could hold all loud work at all. */
function loudFits({ tasks, sessions }: ScheduleProblem): boolean {
  const wanted = tasks.reduce((sum, { loud, minutes }) => sum + (loud ? minutes : 0), 0);
  return wanted <= sessions.reduce((sum, { from, quietFrom }) => sum + quietFrom - from, 0);
}

/** The same with sealing at whatever hour there is. */
export function atAnyHour(problem: ScheduleProblem): ScheduleProblem {
  return { ...problem, tasks: problem.tasks.map(task => ({ ...task, fair: false })) };
}

/** The work as tasks in the hours of these days, and the pieces that the tasks stand for. */
export function workProblem(
  work: readonly Work[],
  days: readonly SessionDay[],
  crew: LaidFor,
): { readonly problem: ScheduleProblem; readonly pieces: readonly Piece[] } {
  const { people } = crew;
  const { noiseUntil } = crew.sessions;
  const sessions = days.map(day => {
    const { daysOn, from, to } = day;
    const minute = (ofDay: Minutes) => daysOn * DAY + Math.round(ofDay);
    const fair = sealHours(day);
    return {
      from: minute(from),
      to: minute(to),
      quietFrom: minute(Math.max(from, Math.min(to, noiseUntil))),
      ...(fair && { fair: { from: minute(fair.from), to: minute(fair.to) } }),
    };
  });
  const pieces = piecesOf(work, longestOf(sessions));
  const tasks = tasksOf(pieces, crew);
  return { problem: { people, tasks, waits: waitsOf(pieces, people), sessions }, pieces };
}

function longestOf(sessions: ScheduleProblem['sessions']): Longest {
  return {
    quiet: Math.max(0, ...sessions.map(({ from, to }) => to - from)),
    loud: Math.max(0, ...sessions.map(({ from, quietFrom }) => quietFrom - from)),
  };
}

type Placed = Schedule['turns'][number] & { readonly piece: Piece };

function sessionsOf(
  { turns }: Schedule,
  pieces: readonly Piece[],
  days: readonly SessionDay[],
): readonly Session[] {
  const byId = new Map(pieces.map(piece => [piece.id, piece]));
  const placed = turns.flatMap((turn): readonly Placed[] => {
    const piece = byId.get(turn.task);
    return piece === undefined ? [] : [{ ...turn, piece }];
  });
  const merged = days.map((day, at) =>
    mergedTurns(
      placed.filter(it => it.session === at),
      day,
    ),
  );
  const parts = partsOf(merged.flat());
  const used = days.flatMap((day, at) => {
    const own = merged[at] ?? [];
    return own.length === 0 ? [] : [{ day, own }];
  });
  return used.map(({ day, own }, at) => {
    const { daysOn: _, ...when } = day;
    const ends = Math.max(...own.map(({ to }) => to));
    const stands = standsOf(own, ends);
    const longest = stands.toSorted((a, b) => b.until - a.until)[0];
    return {
      ...when,
      number: at + 1,
      steps: [...new Set(own.map(({ step }) => step.id))],
      minutes: ends - Math.min(...own.map(({ from }) => from)),
      turns: own.map(turn => toldTurn(turn, parts)),
      endsWith:
        longest === undefined
          ? ''
          : `${longest.name.toLowerCase()}, ${formatMinutes(longest.minutes)}`,
      stands: stands.map(({ minutes: __, ...stand }) => stand),
    };
  });
}

/** A stretch of one step without a break, in minutes of its day. */
type Stretch = Omit<Turn, 'step' | 'part'> & { readonly step: Step };

function mergedTurns(placed: readonly Placed[], { daysOn }: SessionDay): readonly Stretch[] {
  const stretches: Stretch[] = [];
  const order: readonly Step['who'][] = ['lead', 'helper', 'both'];
  const inOrder = placed.toSorted(
    (a, b) => a.from - b.from || order.indexOf(a.piece.step.who) - order.indexOf(b.piece.step.who),
  );
  for (const { piece, from, to } of inOrder) {
    const begin = from - daysOn * DAY;
    const end = to - daysOn * DAY;
    const before = stretches.findLastIndex(it => it.step.id === piece.step.id);
    const open = stretches[before];
    if (open !== undefined && open.to === begin) stretches[before] = { ...open, to: end };
    else stretches.push({ step: piece.step, who: piece.step.who, from: begin, to: end });
  }
  return stretches;
}

/** How many stretches each step is spread over. */
function partsOf(stretches: readonly Stretch[]): ReadonlyMap<string, readonly Stretch[]> {
  const parts = new Map<string, readonly Stretch[]>();
  for (const stretch of stretches)
    parts.set(stretch.step.id, [...(parts.get(stretch.step.id) ?? []), stretch]);
  return parts;
}

function toldTurn(stretch: Stretch, parts: ReadonlyMap<string, readonly Stretch[]>): Turn {
  const own = parts.get(stretch.step.id) ?? [];
  const { step, who, from, to } = stretch;
  const turn = { step: step.id, who, from, to };
  return own.length < 2
    ? turn
    : { ...turn, part: { number: own.indexOf(stretch) + 1, of: own.length } };
}

/**
 * Waits that a session begins and that outlast it. A part of a step begins them too: panels that were closed tonight
 * stay in their clamps, though others are closed tomorrow. Of several parts the last one is told.
 */
function standsOf(own: readonly Stretch[], ends: Minutes) {
  const waits = own.flatMap(({ step, to }) =>
    step.timers
      .filter(({ minutes }) => minutes >= STOOD_OUT && to + minutes > ends)
      .map(({ id, name, minutes }) => ({ timer: id, name, minutes, until: to + minutes })),
  );
  return waits.filter(({ timer }, at) => !waits.slice(at + 1).some(it => it.timer === timer));
}
