import { SIXTEENTHS } from '../../src/measure/displays.js';
import { atAnyHour, workProblem } from '../../src/plan/lay-work.js';
import type { Plan } from '../../src/plan/plan.js';
import { settingOf } from '../../src/plan/setting.js';
import { daysFor, workOf } from '../../src/plan/time-plan.js';
import { parseDays } from '../../src/recipe/answers/days-answer.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import type { Answer, Answers } from '../../src/recipe/values.js';
import type { ScheduleProblem } from '../../src/solve/schedule/problem.js';
import { project } from './projects.js';

export const BENCH = project('planter-bench');
const CHECKED: Answers = usualAnswers(BENCH);

export const clock = (hours: number): Answer => ({ kind: 'clock', value: hours * 60 });
export const hours = (value: number): Answer => ({ kind: 'hours', value });
export const days = (text: string): Answer => {
  const read = parseDays(text);
  if (!read.ok) throw new Error(read.problem);
  return { kind: 'days', value: read.value };
};
export const FIRST: Answer = { kind: 'date', value: '2026-12-04' };

/** Sets of hours that people have. */
export const HABITS: readonly (readonly [string, Answers])[] = [
  ['three hours every evening', {}],
  [
    'three long evenings, quiet from 20:00',
    { session_hours: hours(5), session_from: clock(17.5), noise_until: clock(20) },
  ],
  ['Fridays and Saturdays', { first_day: FIRST, session_days: days('Fri, Sat 9:00-14:00') }],
  [
    'one person, two hours',
    { people: { kind: 'choice', value: 'alone' }, session_hours: hours(2) },
  ],
  ['an hour a day', { session_hours: hours(1) }],
  [
    'one person, an hour a day',
    { people: { kind: 'choice', value: 'alone' }, session_hours: hours(1) },
  ],
];

/** Every turn with its step and its session. */
export function turnsOf(plan: Plan) {
  return plan.time.sessions.flatMap((session, at) =>
    session.turns.map(turn => ({ ...turn, session, at, step: stepOf(plan, turn.step) })),
  );
}

/** A step by its id. */
export function stepOf({ steps }: Plan, id: string) {
  const step = steps.find(it => it.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  return step;
}

/** What was laid for these answers. Where no session has the hours for sealing, it is laid at any hour and told. */
export function laidProblem({ steps, time }: Plan, answers: Answers): ScheduleProblem {
  const setting = settingOf({ ...CHECKED, ...answers }, SIXTEENTHS);
  const { problem } = workProblem(workOf(steps), daysFor(steps, setting), setting);
  return /Sealing falls/.test(time.trouble) ? atAnyHour(problem) : problem;
}
