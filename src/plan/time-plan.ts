import { COMMON_PRACTICE, COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { DAY } from '../measure/spans.js';
import { laidWords } from './laid-words.js';
import { type Laid, layWork } from './lay-work.js';
import type { Session, Step, TimePlan } from './plan.js';
import { sessionDays } from './session-days.js';
import type { Setting } from './setting.js';
import { isInGarage } from './step-lasts.js';
import { timeTroubles } from './time-troubles.js';
import type { Work } from './work-pieces.js';

/**
 * Minutes from counts, laid into the hours that somebody has: who does what when, saws before the last hour of
 * noise, waits between sessions where they can be. The shortest such plan is searched, and it says how sure that is.
 * It is laid when somebody first looks: the interview makes a plan at every answer and shows no hours.
 */
export function timePlan(steps: readonly Step[], setting: Setting): TimePlan {
  const { people } = setting;
  const { noiseUntil } = setting.sessions;
  const hands = steps.reduce((sum, { minutes }) => sum + minutes.value, 0);
  let kept: Laid | undefined;
  const laid = (): Laid => {
    kept ??= layWork(workOf(steps), daysFor(steps, setting), setting);
    return kept;
  };
  return {
    hands: figure(hands, 'min', handsWords(people), COMMON_PRACTICE),
    waits: steps.flatMap(step => step.timers.map(({ name, minutes }) => ({ name, minutes }))),
    people,
    noiseUntil,
    get sessions() {
      return sessionsOf(laid());
    },
    get finish() {
      return finishFigure(laid());
    },
    get proven() {
      return isProven(laid());
    },
    get trouble() {
      return timeTroubles(laid(), steps, setting);
    },
  };
}

function sessionsOf(laid: Laid): readonly Session[] {
  return laid.ok ? laid.sessions : [];
}

function isProven(laid: Laid): boolean {
  return laid.ok && laid.schedule.proof.kind !== 'none';
}

function handsWords(people: number): string {
  const two = people === 2 ? ', two people side by side where a step has work for two' : '';
  return `each piece, cut, screw and square foot at its usual time, a quarter more for fetching and tidying${two}`;
}

/** The steps that are done in the garage, with how long each takes. */
export function workOf(steps: readonly Step[]): readonly Work[] {
  return steps.filter(isInGarage).map(step => ({
    step,
    minutes: step.minutes.value,
    pieces: step.tally?.count ?? 1,
    from: 0,
  }));
}

/** More days than this are not looked at; a judgment of ours, far past any build. */
const MOST_DAYS = 120;

/** As many days as the work could ever spread over, each wait and each step on a day of its own. */
export function daysFor(steps: readonly Step[], { sessions }: Setting) {
  const minutes = workOf(steps).reduce((sum, work) => sum + work.minutes, 0);
  const shortest = Math.max(30, Math.min(...sessions.days.map(({ from, to }) => to - from)));
  const waitDays = steps
    .flatMap(({ timers }) => timers)
    .reduce((sum, timer) => sum + Math.ceil(timer.minutes / DAY), 0);
  const count = Math.ceil((2 * minutes) / shortest) + waitDays + 4;
  return sessionDays(sessions, Math.min(MOST_DAYS, count));
}

function finishFigure(laid: Laid): Figure {
  if (!laid.ok) return figure(0, 'min', 'not laid into sessions', COMPUTED);
  const { schedule } = laid;
  const begin = Math.min(...schedule.turns.map(({ from }) => from));
  return figure(schedule.finish - begin, 'min', laidWords(schedule), COMPUTED);
}
