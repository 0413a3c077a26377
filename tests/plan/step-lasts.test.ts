import { describe, expect, test } from 'vitest';
import { AGE_BANDS } from '../../src/materials/helper-ages.js';
import { formatMinutes } from '../../src/measure/duration.js';
import type { Plan, Step } from '../../src/plan/plan.js';
import { stepsPage } from '../../src/print/steps-page.js';
import type { Answers } from '../../src/recipe/values.js';
import { pageLines } from '../../src/text/page-lines.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');
const PEOPLE = [
  'alone',
  ...AGE_BANDS.map(({ id }) => (id === 'grown' ? 'helper' : `helper-${id}`)),
];

function withPeople(people: string): Answers {
  return { people: { kind: 'choice', value: people } };
}

function lasts({ steps }: Plan, id: string): number {
  const step = steps.find(it => it.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  return step.minutes.value;
}

describe.each(PEOPLE)('with %s', people => {
  const plan = planOf(BENCH, withPeople(people));

  test('a step lasts as long in the hours as in the list and at its head', () => {
    const laid = (step: Step) =>
      plan.time.sessions
        .flatMap(({ turns }) => turns)
        .filter(turn => turn.step === step.id)
        .reduce((sum, { from, to }) => sum + to - from, 0);
    const heads = pageLines(stepsPage(plan), 200).join('\n');
    for (const [at, step] of plan.steps.entries()) {
      const { phase, title, minutes } = step;
      const about = heads.match(new RegExp(`^${at + 1}\\. .*about (.*)\\)$`, 'm'))?.[1];
      expect(about, title).toBe(formatMinutes(minutes.value));
      if (phase !== 'plan' && phase !== 'buy') expect(laid(step), title).toBe(minutes.value);
    }
  });

  // Common practice: glue that is brushed does not wait, so each glue-up is closed before the next is begun.
  test('a step with glue is planned no shorter than its glue-ups, as they are told, one after the other', () => {
    expect(plan.glueUps.length).toBeGreaterThan(3);
    for (const { step, title, count, kinds } of plan.glueUps) {
      const each = Math.max(...kinds.map(({ minutes }) => Math.ceil(minutes.value - 1e-9)));
      expect(lasts(plan, step), title).toBeGreaterThanOrEqual(count.value * each);
    }
  });

  test('the hands-on time is the sum of the list', () => {
    const sum = plan.steps.reduce((minutes, step) => minutes + step.minutes.value, 0);
    expect(plan.time.hands.value).toBe(sum);
  });
});

describe('how long two take', () => {
  const alone = planOf(BENCH, withPeople('alone'));
  const grown = planOf(BENCH, withPeople('helper'));

  // Common practice: the mill's end of every board is squared before it comes against the stop.
  test('the end of each board that is bought is squared once', () => {
    const told = grown.steps.map(
      ({ minutes }) => / (\d+) board ends? squared/.exec(minutes.because)?.[1],
    );
    const squared = told.reduce((sum, ends) => sum + Number(ends ?? 0), 0);
    const boards = grown.purchases.reduce((sum, { boards: own }) => sum + own.length, 0);
    expect(boards).toBeGreaterThan(10);
    expect(squared).toBe(boards);
  });

  // By hand: 4.5 min for the stop, 25 cuts at 0.6 min: 19.5, a quarter more: 24 to 25 min.
  test('25 cuts at one stop: alone 25 min, a quarter less with somebody who takes the pieces away', () => {
    const [id = ''] = grown.steps.filter(it => it.title.startsWith('Cut 25')).map(it => it.id);
    expect(lasts(alone, id)).toBe(25);
    expect(lasts(grown, id)).toBe(19);
  });

  // Common practice of this project: two take 0.55 of the time of one where both can do all of it.
  test('gluing and screwing is shared whole by two who are grown', () => {
    expect(lasts(grown, 'box-corners') / lasts(alone, 'box-corners')).toBeCloseTo(0.55, 2);
  });

  // By hand: an end panel is filled in one glue-up of eight joints, the keepers' 16-1/2 sq in and the slats' less than
  // 25 sq in each: 8 x 0.275 + 3 = 5.2 min. Two of them are 10.4, a quarter more for fetching: 13.
  test('filling two end panels is two glue-ups of 5.2 min with the fetching between: 13 min', () => {
    expect(lasts(grown, 'end-infill')).toBe(13);
  });

  test('hearing the owner, buying and handing over go no faster with two', () => {
    for (const id of ['talk', 'buy', 'hand-over']) expect(lasts(grown, id)).toBe(lasts(alone, id));
  });
});

// 29 CFR 570.55 and the age table of this project: the younger, the fewer tools; fewer hands cannot be faster.
test('a younger helper makes no step and no job faster than an older one, nor slower than nobody', () => {
  const plans = [
    'helper',
    'helper-16-17',
    'helper-12-15',
    'helper-9-11',
    'helper-under-9',
    'alone',
  ];
  const made = plans.map(people => planOf(BENCH, withPeople(people)));
  for (const [at, younger] of made.entries()) {
    const older = made[at - 1];
    if (older === undefined) continue;
    for (const step of older.steps)
      expect(lasts(younger, step.id), step.id).toBeGreaterThanOrEqual(step.minutes.value);
    expect(younger.time.hands.value).toBeGreaterThanOrEqual(older.time.hands.value);
    expect(younger.time.sessions.length).toBeGreaterThanOrEqual(older.time.sessions.length);
  }
});
