import { expect, test } from 'vitest';
import type { Session } from '../../src/plan/plan.js';
import { hoursWords } from '../../src/workbook/hours-words.js';
import { HOUR, step } from '../support/journal.js';
import { smallPlan } from '../support/small-plan.js';

const figure = (value: number) => ({ ...smallPlan().time.hands, value });

/** Talking 20 min; then notching 60 by the lead, sanding 40 beside it by the helper, gluing 30 together. */
const STEPS = [
  step('talk', { phase: 'plan', minutes: figure(20) }),
  step('notch', { who: 'lead', minutes: figure(60) }),
  step('sand', { who: 'helper', minutes: figure(40) }),
  step('glue', { minutes: figure(30) }),
];
const EVENING: Session = {
  number: 1,
  from: 18 * 60,
  to: 21 * 60,
  steps: ['notch', 'sand', 'glue'],
  minutes: 90,
  turns: [
    { step: 'notch', who: 'lead', from: 1080, to: 1140 },
    { step: 'sand', who: 'helper', from: 1080, to: 1120 },
    { step: 'glue', who: 'both', from: 1140, to: 1170 },
  ],
  endsWith: '',
  stands: [],
};

function planned(sessions: readonly Session[]) {
  return { steps: STEPS, time: { ...smallPlan().time, hands: figure(150), sessions } };
}

// By hand: 20 before the first session, then 60 + 30 by the clock; the sanding is done in the hour of the notches.
// The minutes of all steps come to 150 and nobody who keeps to the plan is at the bench for so long.
test('what two did side by side counts once, in the plan as in the journal', () => {
  expect(hoursWords(planned([EVENING]), { workedMs: (11 / 6) * HOUR })).toBe(
    'about 1 h 50 min at the bench by this journal; the plan said 1 h 50 min',
  );
});

test('without hours that hold the work there is only the sum of its steps, and it is called that', () => {
  expect(hoursWords(planned([]), { workedMs: 2 * HOUR })).toBe(
    'about 2 h at the bench by this journal; the steps of the plan add up to 2 h 30 min',
  );
});
