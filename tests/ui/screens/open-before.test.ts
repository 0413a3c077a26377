import { describe, expect, test } from 'vitest';
import { recapFacts } from '../../../src/ui/screens/resume/recap-facts.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  allTold,
  benchPlan,
  buildAfter,
  contextWith,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const PLAN = benchPlan();
const STEPS = PLAN.steps;
const HEARD = allTold(PLAN);

/** Number of the first step that cuts pieces of 2x4 of a foot and more, and of those that cut the short blocks off. */
const sawn = (id: RegExp) => STEPS.flatMap((it, at) => (id.test(it.id) ? [at + 1] : []));
const SHORT = sawn(/^cut-feet\/2x4/);
const [LONG = 0] = sawn(/^cut-boards\/2x4/);

function at(step: number, done: readonly number[]) {
  const events = done.map(
    (number): Event => ({
      kind: 'step-done',
      atMs: TUESDAY_MS,
      step: STEPS[number - 1]?.id ?? '',
    }),
  );
  const build = buildAfter([...HEARD, ...events], PLAN);
  const keys = ['l', ...String(step), 'enter'];
  const used = keys.reduce(
    (now, key) => now.wait(400).press(key),
    usedWith(stepScreen, contextWith(build)),
  );
  const page = viewLines(stepScreen, used.state, used.at).join(' ').replace(/\s+/g, ' ');
  return { page, used };
}

/** Screws are counted out for the glue-up, in step 6: the saw does not wait for them. */
const BUT_SCREWS = 'steps 1 to 5, 7 and 8';

const upTo = (last: number) => Array.from({ length: last }, (_, at) => at + 1);

describe('steps that were passed over', () => {
  test('a jump to the saw on a fresh build says that all before it is open, and why short blocks come first', () => {
    const { page } = at(LONG, []);
    expect(page).toContain(`Open before this: ${BUT_SCREWS}.`);
    expect(page).toContain('Short pieces, which steps ');
  });

  test('with only the blocks left out, the blocks are named', () => {
    const done = upTo(LONG - 1).filter(number => !SHORT.includes(number));
    expect(at(LONG, done).page).toContain(
      `Open before this: steps ${SHORT.join(' and ')}. Short pieces`,
    );
  });

  test('in the order of the plan nothing is said', () => {
    expect(at(LONG, upTo(LONG - 1)).page).not.toContain('Open before');
    expect(at(SHORT[0] ?? 0, upTo((SHORT[0] ?? 0) - 1)).page).not.toContain('Open before');
  });

  test('where it was left says so too, beside the step that comes next', () => {
    const { used } = at(LONG, []);
    const done: readonly Event[] = [
      { kind: 'step-done', atMs: TUESDAY_MS, step: STEPS[LONG - 1]?.id ?? '' },
      { kind: 'step-visited', atMs: TUESDAY_MS, step: STEPS[LONG]?.id ?? '' },
    ];
    const facts = recapFacts(buildAfter([...HEARD, ...done], PLAN), used.at);
    const open = facts.find(({ name }) => name === 'Open first')?.text;
    expect(facts.find(({ name }) => name === 'Next')?.text).toContain(`Step ${LONG + 1}:`);
    expect(open).toMatch(new RegExp(`^${BUT_SCREWS}\\. Short pieces`));
  });
});
