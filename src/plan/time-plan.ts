import { formatMinutes } from '../measure/duration.js';
import { COMMON_PRACTICE } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import type { Session, Step, TimePlan } from './plan.js';
import { sessionDays } from './session-days.js';
import type { Setting } from './setting.js';

/** Waits longer than this are left to fall between two sessions. */
const WORTH_LEAVING: Minutes = 45;
/** A session that is this full may end early where a long wait begins. */
const FULL_ENOUGH = 0.6;
/** Looking, fetching and tidying beside the work that is counted; common practice. */
const AROUND = 1.25;

/**
 * A first estimate: minutes from counts, in the order of the steps, cut into sessions. A session ends
 * when the next step no longer fits, or a little earlier where clamps or sealer have to stand anyway.
 */
export function timePlan(steps: readonly Step[], setting: Setting): TimePlan {
  const shares = steps.map(step => ({ step, minutes: around(step, setting) }));
  const hands = shares.reduce((sum, { minutes }) => sum + minutes, 0);
  const because =
    `each piece, cut, screw and square foot at its usual time, a quarter more for fetching and tidying` +
    (setting.people === 2 ? ', two people side by side where a step has work for two' : '');
  return {
    hands: figure(Math.round(hands), 'min', because, COMMON_PRACTICE),
    waits: steps.flatMap(step => step.timers.map(({ name, minutes }) => ({ name, minutes }))),
    sessions: dated(sessionsOf(shares, setting.sessionMinutes), setting),
    people: setting.people,
    noiseUntil: setting.sessions.noiseUntil,
  };
}

/** Two people do a shared step in less time, though not in half: one of them often waits. */
const WITH_TWO = 0.55;

function around({ who, minutes }: Step, { people }: Setting): Minutes {
  const shared = people === 2 && who === 'both' ? WITH_TWO : 1;
  return minutes.value * AROUND * shared;
}

type Share = { readonly step: Step; readonly minutes: Minutes };
type Open = {
  steps: string[];
  minutes: Minutes;
  endsWith: string;
  /** A wait of many hours that has begun: only what belongs to it can still be done today. */
  waits?: { readonly phase: Step['phase']; readonly words: string };
};

/** From this long on, what comes after a wait is for another day. */
const ANOTHER_DAY: Minutes = 240;

/** Talking and buying are done before the first session in the garage. */
function inGarage({ step }: Share): boolean {
  return step.phase !== 'plan' && step.phase !== 'buy';
}

/** A step that is counted piece by piece can be left in the middle, if there is time to get going. */
const WORTH_BEGINNING: Minutes = 25;

function sessionsOf(shares: readonly Share[], room: Minutes): readonly Bare[] {
  const sessions: Open[] = [];
  for (const { step, minutes } of shares.filter(inGarage)) {
    let left = minutes;
    while (left > 0) {
      const session = openSession(sessions, left, step, room);
      const now = step.tally ? Math.min(left, Math.max(room - session.minutes, 1)) : left;
      session.steps.push(step.id);
      session.minutes += now;
      left -= now;
      if (left <= 0 && session.minutes > room * FULL_ENOUGH)
        session.endsWith = longWait(step, WORTH_LEAVING, ANOTHER_DAY);
      const words = longWait(step, ANOTHER_DAY);
      if (words !== '') session.waits = { phase: step.phase, words };
    }
  }
  return sessions.map(({ steps, minutes, endsWith, waits }, at) => ({
    steps,
    endsWith: endsWith === '' && waits && at < sessions.length - 1 ? waits.words : endsWith,
    number: at + 1,
    minutes: Math.round(minutes),
  }));
}

/** The session that takes this step: the open one while it has room or the step can be begun in it. */
function openSession(sessions: Open[], minutes: Minutes, step: Step, room: Minutes): Open {
  const open = sessions.at(-1);
  const begins =
    step.tally !== undefined && open !== undefined && room - open.minutes >= WORTH_BEGINNING;
  const fits = open !== undefined && open.minutes + minutes <= room;
  const waiting = open?.waits !== undefined && open.waits.phase !== step.phase;
  if (open && open.endsWith === '' && !waiting && (fits || begins)) return open;
  const fresh: Open = { steps: [], minutes: 0, endsWith: '' };
  sessions.push(fresh);
  return fresh;
}

/** The longest wait that a step begins, in words; empty where none is from `least` to under `most`. */
function longWait(step: Step, least: Minutes, most = Number.POSITIVE_INFINITY): string {
  const fitting = step.timers.filter(({ minutes }) => minutes >= least && minutes < most);
  const [longest] = fitting.sort((a, b) => b.minutes - a.minutes);
  return longest ? `${longest.name.toLowerCase()}, ${formatMinutes(longest.minutes)}` : '';
}

type Bare = Pick<Session, 'number' | 'steps' | 'minutes' | 'endsWith'>;

function dated(sessions: readonly Bare[], { sessions: habit }: Setting): readonly Session[] {
  const days = sessionDays(habit, sessions.length);
  return sessions.flatMap((session, at) => {
    const day = days[at];
    if (day === undefined) return [];
    const { daysOn: _, ...when } = day;
    return [{ ...session, ...when, turns: [], stands: [] }];
  });
}
