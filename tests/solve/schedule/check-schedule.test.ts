import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/solve/schedule/check-schedule.js';
import { planSchedule } from '../../../src/solve/schedule/plan-schedule.js';
import type { Schedule, ScheduleProblem } from '../../../src/solve/schedule/problem.js';

const PROBLEM: ScheduleProblem = {
  people: 2,
  tasks: [
    { id: 'cut', minutes: 30, needs: { all: [0, 1] }, loud: true, from: 0 },
    { id: 'glue', minutes: 20, needs: { all: [0] }, loud: false, from: 0 },
    { id: 'sand', minutes: 20, needs: { all: [1] }, loud: false, from: 0 },
    { id: 'screw', minutes: 10, needs: { anyOf: [0, 1] }, loud: false, from: 0 },
  ],
  waits: [
    { first: 'cut', then: 'glue', minutes: 0 },
    { first: 'glue', then: 'screw', minutes: 60 },
  ],
  sessions: [
    { from: 0, to: 60, quietFrom: 40 },
    { from: 1440, to: 1500, quietFrom: 1480 },
  ],
};

/** By hand: cut 0 to 30, glue and sand 30 to 50, the wait until 110 ends between the sessions, screw at 1440. */
const RIGHT: Schedule = {
  turns: [
    { task: 'cut', from: 0, to: 30, session: 0, people: [0, 1] },
    { task: 'glue', from: 30, to: 50, session: 0, people: [0] },
    { task: 'sand', from: 30, to: 50, session: 0, people: [1] },
    { task: 'screw', from: 1440, to: 1450, session: 1, people: [0] },
  ],
  finish: 1450,
  lowerBound: 1450,
  proof: { kind: 'bound' },
  sessions: 2,
  fewestProven: true,
  work: 0,
};

function changed(task: string, change: Partial<Schedule['turns'][number]>): Schedule {
  const turns = RIGHT.turns.map(turn => (turn.task === task ? { ...turn, ...change } : turn));
  return { ...RIGHT, turns };
}

describe('a schedule added up again', () => {
  test('the one worked out by hand holds, and no other is done earlier', () => {
    expect(checkSchedule(PROBLEM, RIGHT)).toEqual([]);
    const found = planSchedule(PROBLEM);
    expect(found).toMatchObject({ ok: true, schedule: { finish: 1450, lowerBound: 1450 } });
  });

  test.each([
    ['a task is left out', { ...RIGHT, turns: RIGHT.turns.slice(1) }, 'cut is done 0 times.'],
    ['a task is cut short', changed('glue', { to: 40 }), 'glue takes 10 minutes.'],
    ['a saw runs into the quiet', changed('cut', { from: 15, to: 45 }), 'cut is loud after'],
    ['work goes on past the door', changed('sand', { from: 45, to: 65 }), 'sand lies outside'],
    ['one person does two things', changed('sand', { people: [0] }), 'Somebody does glue and sand'],
    ['the wrong person', changed('glue', { people: [1] }), 'glue is done by the wrong people.'],
    ['a wait is cut', changed('screw', { from: 50, to: 60, session: 0 }), 'does not wait 60'],
    ['the end is made up', { ...RIGHT, finish: 1400 }, 'The last task ends at 1450'],
    ['the bound is made up', { ...RIGHT, lowerBound: 1500 }, 'The bound 1500 is after'],
  ])('%s', (_name, schedule, fault) => {
    expect(checkSchedule(PROBLEM, schedule).join(' ')).toContain(fault);
  });
});

describe('work that hangs on the time of day', () => {
  const coat = { id: 'coat', minutes: 20, needs: { all: [0] }, loud: false, from: 0, fair: true };
  const evening = { from: 0, to: 60, quietFrom: 60 };
  const morning = { from: 1440, to: 1560, quietFrom: 1560, fair: { from: 1500, to: 1530 } };
  const problem = { people: 1, tasks: [coat], waits: [], sessions: [evening, morning] };

  // By hand: none of the evening suits, the morning does from minute 1500 on.
  test('waits for a session that has such hours, and for these hours in it', () => {
    const found = planSchedule(problem);
    expect(found).toMatchObject({ ok: true, schedule: { finish: 1520, proof: { kind: 'bound' } } });
    if (!found.ok) return;
    expect(checkSchedule(problem, found.schedule)).toEqual([]);
    const [turn] = found.schedule.turns;
    const early = { ...found.schedule, turns: [{ ...turn, from: 1440, to: 1460 }], finish: 1460 };
    expect(checkSchedule(problem, early as Schedule).join(' ')).toContain('outside the fair hours');
  });

  test('where no session has any, there is no schedule', () => {
    const found = planSchedule({ ...problem, sessions: [evening] });
    expect(found).toEqual({ ok: false });
  });
});

describe('work that does not go into the sessions', () => {
  test('a task longer than every session', () => {
    const long = { id: 'long', minutes: 61, needs: { all: [0] }, loud: false, from: 0 };
    expect(planSchedule({ ...PROBLEM, tasks: [...PROBLEM.tasks, long] })).toEqual({ ok: false });
  });

  test('too few sessions', () => {
    const few = { ...PROBLEM, sessions: PROBLEM.sessions.slice(0, 1) };
    expect(planSchedule(few)).toEqual({ ok: false });
  });
});
