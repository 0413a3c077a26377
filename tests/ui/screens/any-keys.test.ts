import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../src/text/width.js';
import type { Build, Screen } from '../../../src/ui/screen.js';
import { mistakeScreen } from '../../../src/ui/screens/mistake/screen.js';
import { pauseScreen } from '../../../src/ui/screens/pause/screen.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { resumeScreen } from '../../../src/ui/screens/resume/screen.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import { timersScreen } from '../../../src/ui/screens/timers/screen.js';
import { fromSaved, toSaved } from '../../../src/workbook/saved.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';
import { smallPlan } from '../../support/small-plan.js';

const NAMED = [
  'space',
  'enter',
  'page-down',
  'page-up',
  'backspace',
  'escape',
  'up',
  'down',
  'left',
  'right',
  'home',
  'end',
  'tab',
];
const SIGNS = [...'+-0123456789wcvtnuldpbsxakmr?€'];
const TYPED = ['typed:', 'typed: ', `typed:${'a long note '.repeat(20)}`];

const key = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom('space', 'd', 'right', 'l', 't', 'v', 'x') },
  { weight: 5, arbitrary: fc.constantFrom(...NAMED, ...SIGNS, ...TYPED) },
);

/** From the smallest window with all urgent lines to a large one. */
const size = fc.record({
  columns: fc.integer({ min: 60, max: 140 }),
  rows: fc.integer({ min: 9, max: 40 }),
});

const PLANS = [smallPlan(), benchPlan()];

const session = fc.record({
  plan: fc.constantFrom(...PLANS),
  step: fc.nat(),
  size,
  ascii: fc.boolean(),
  keys: fc.array(key, { minLength: 1, maxLength: 12 }),
  waits: fc.constantFrom(0, 300, 20 * MINUTE_MS),
});

/** The build at one of its steps, the ones before it done. */
function buildAt({ plan, step }: { plan: Build['plan']; step: number }): Build {
  const number = step % plan.steps.length;
  const atMs = TUESDAY_MS;
  return buildAfter(
    [
      { kind: 'build-started', atMs },
      ...plan.steps
        .slice(0, number)
        .map(({ id }) => ({ kind: 'step-done', atMs, step: id }) as const),
    ],
    plan,
  );
}

function holds<State>(
  screen: Screen<State>,
  run: typeof session extends fc.Arbitrary<infer Run> ? Run : never,
) {
  const at = contextWith(buildAt(run), { size: run.size, ascii: run.ascii });
  const used = usedWith(screen, at);
  for (const name of run.keys) {
    used.press(name).wait(run.waits);
    screen.hints(used.state, used.at);
    expect(textWidth(screen.title(used.state, used.at))).toBeLessThanOrEqual(run.size.columns);
  }
  const lines = viewLines(screen, used.state, used.at);
  expect(lines.length).toBeLessThanOrEqual(run.size.rows);
  expect(Math.max(...lines.map(textWidth))).toBeLessThanOrEqual(run.size.columns);
  if (run.ascii) expect(lines.join('\n')).toMatch(/^[\x00-\x7f]*$/);
  const { workbook } = used.at.build ?? buildAt(run);
  expect(fromSaved(toSaved(workbook))).toEqual({ ok: true, workbook });
}

describe('whatever keys are pressed, the frame holds and the journal can be saved', () => {
  test.each([
    ['step', stepScreen, 250],
    ['plan', planScreen, 100],
    ['timers', timersScreen, 60],
    ['pause', pauseScreen, 60],
    ['mistake', mistakeScreen, 60],
    ['resume', resumeScreen, 60],
  ] as const)('%s', (_, screen, numRuns) => {
    fc.assert(
      fc.property(session, run => holds(screen as Screen<unknown>, run)),
      { numRuns },
    );
  });
});

test('in plain ASCII, what is typed is shown in ASCII too', () => {
  const keys = ['space', 'space', '€', 'space'];
  const size = { columns: 60, rows: 9 };
  holds(mistakeScreen as Screen<unknown>, {
    plan: smallPlan(),
    step: 1,
    size,
    ascii: true,
    keys,
    waits: 0,
  });
});
