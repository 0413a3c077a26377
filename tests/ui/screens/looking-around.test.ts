import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/plan/plan.js';
import { dayScreen } from '../../../src/ui/screens/day/screen.js';
import { choicesOf } from '../../../src/ui/screens/measure/choices.js';
import { pauseScreen } from '../../../src/ui/screens/pause/screen.js';
import { planPages } from '../../../src/ui/screens/plan/pages.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { recapFacts } from '../../../src/ui/screens/resume/recap-facts.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { step } from '../../support/journal.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';
import { smallPlan } from '../../support/small-plan.js';

/** The place is measured, one of two rails is cut: the work is at the saw. */
const SAWING: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_MS },
  ...['miter-saw', 'dust', 'glue'].map(
    (caution): Event => ({ kind: 'briefed', atMs: TUESDAY_MS, caution }),
  ),
  { kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' },
  { kind: 'piece-done', atMs: TUESDAY_MS, step: 'cut/2x4@45', count: 1 },
];

/** What was done at the bench with these keys, and the recap after it. */
function afterKeys(keys: string, plan: Plan = smallPlan()) {
  const used = usedWith(stepScreen, contextWith(buildAfter(SAWING, plan)));
  for (const key of keys.split(' ')) used.wait(400).press(key);
  const build = used.at.build ?? buildAfter(SAWING, plan);
  const next = recapFacts(build, used.at).find(({ name }) => name === 'Next')?.text ?? '';
  return { used, build, next };
}

describe('looking is not working', () => {
  test.each([
    ['through the list of steps', 'l 5 enter'],
    ['one step after the other', 'right right right'],
    ['and reading why, the cautions and the view for the helper', 'l 5 enter w space c space h'],
    ['and writing down what one will need there', 'l 5 enter n typed:lids_for_the_rags enter'],
    ['and undoing a piece that was counted there by mistake', 'l 4 enter + u u'],
  ])('a look at the sealing %s leaves Next at the saw', (_, keys) => {
    const { used, next } = afterKeys(keys);
    expect(stepScreen.stepSeen?.(used.state, used.at)).not.toBe('cut/2x4@45');
    expect(next).toMatch(/^Step 2: Cut the seat rails/);
  });

  test('nor does the pause lay the brush ready in place of the saw', () => {
    const { build } = afterKeys('l 5 enter');
    const pause = usedWith(pauseScreen, contextWith(build)).press('enter');
    const text = viewLines(pauseScreen, pause.state, pause.at).join('\n');
    expect(text).toContain('You stop at step 2 of 6');
    expect(text).toContain('Lay ready for next time: miter saw and tape');
  });
});

describe('work there moves it', () => {
  test.each([
    ['a piece is counted', 'l 4 enter +'],
    ['a check is ticked', 'l 4 enter 1'],
  ])('%s', (_, keys) => {
    expect(afterKeys(keys).next).toMatch(/^Step 4: Set the seat rails/);
  });

  test('a caution is read aloud before it', () => {
    expect(afterKeys('l 5 enter space').next).toMatch(/^Step 5: Seal/);
  });
});

describe('what is asked is about the step that is seen', () => {
  const bench = benchPlan();
  const begun = buildAfter(SAWING.slice(0, 1), bench);

  test('the tape: the first piece of the step that one looks at', () => {
    const cut = bench.steps.filter(({ phase, tally }) => phase === 'cut' && tally).at(-1);
    const at = contextWith(begun, { stepSeen: cut?.id });
    expect(choicesOf({ build: begun, at })[0]).toMatchObject({
      kind: 'first',
      cutting: { step: { id: cut?.id } },
    });
  });

  test.each([
    ['from the store the list of what to buy', 'buy', 'boards'],
    ['from the saw the boards by their numbers', bench.steps.find(it => it.tally)?.id, 'boards'],
    ['from a frame the drawing', 'end-corners', 'drawing'],
    ['from no step the drawing', undefined, 'drawing'],
  ])('the plan: %s', (_, stepSeen, page) => {
    const at = contextWith(buildAfter([], bench), { stepSeen });
    const { state } = usedWith(planScreen, at);
    expect(at.build && planPages(at.build)[state.page]?.id).toBe(page);
  });

  test('the day: for sealer where one looks at a coat of it, and telling it is work there', () => {
    const plan = { ...smallPlan(), steps: [step('cut'), step('seal', { day: 'seal' })] };
    const at = contextWith(buildAfter([], plan), { stepSeen: 'seal' });
    const used = usedWith(dayScreen, at);
    expect(dayScreen.title(used.state, at)).toBe('Is it a day for sealer?');
    for (let line = 0; line < 5; line += 1) used.press('enter');
    expect(used.at.build?.progress.lastStep).toBe('seal');
  });
});
