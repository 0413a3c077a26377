import { describe, expect, test } from 'vitest';
import type { Plan, Step } from '../../../src/plan/plan.js';
import { hintRows } from '../../../src/ui/hint-rows.js';
import { type Move, nextMove } from '../../../src/ui/screens/step/next-move.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  ROOM,
  usedWith,
} from '../../support/open-build.js';

const BENCH = benchPlan();
/** Seven for the step as it stands, and four that are the same at every step. */
const CROWDED = 11;

/** The bench at every turn of the work, from the first step to the last: keys that are seen, and the step. */
function everyTurn(
  columns: number,
  plan: Plan,
  look: (seen: readonly string[], step: Step, move: Move['kind']) => void,
) {
  const used = usedWith(
    stepScreen,
    contextWith(buildAfter([], plan), { size: ROOM[columns] ?? { columns, rows: 18 } }),
  );
  for (let turn = 0; turn < 2000; turn += 1) {
    const { build } = used.at;
    const step = plan.steps.find(({ id }) => id === used.state.step);
    if (build === undefined || step === undefined) return;
    const rows = hintRows(stepScreen.hints(used.state, used.at), columns);
    const move = nextMove(step, build, used.at.nowMs);
    look(
      rows.flat().map(({ key }) => key),
      step,
      move.kind,
    );
    if (move.kind === 'tell-day') {
      used.record([{ kind: 'day-told', atMs: used.at.nowMs, work: move.work }]);
    }
    used.wait(move.kind === 'wait' ? 25 * 60 * MINUTE_MS : 1000).press('space');
  }
  throw new Error('the bench never came to its end');
}

describe.each([80, 60])('in a window of %i columns, at every turn of the whole bench', columns => {
  test('what belongs to the step is seen: its cautions, its timers', () => {
    let turns = 0;
    everyTurn(columns, BENCH, (seen, step, move) => {
      turns += 1;
      if (step.care.length > 0) expect(seen, step.id).toContain('c');
      // While the lead tells about the tools, no timer of the step is near.
      if (step.timers.length > 0 && move !== 'brief') expect(seen, step.id).toContain('t');
    });
    expect(turns).toBeGreaterThan(BENCH.steps.length);
  });

  test('the way on, back, to the helper, out and to all other keys is always there, and little else', () => {
    everyTurn(columns, BENCH, (seen, step) => {
      expect(seen, step.id).toEqual(expect.arrayContaining(['space', '?', 'u', 'h', 'p']));
      expect(seen.length, `${step.id}: ${seen.join(' ')}`).toBeLessThanOrEqual(CROWDED);
    });
  });
});

test.each([
  ['where an answer is to be written down, the note', 'ask-load', ['n']],
  ['at the store, the tape for what the boards really are', 'buy', ['s']],
])('a key is seen for what the step says: %s', (_, id, keys) => {
  let turns = 0;
  everyTurn(80, BENCH, (seen, step, move) => {
    if (step.id !== id || move !== 'check') return;
    turns += 1;
    expect(seen).toEqual(expect.arrayContaining(keys));
  });
  expect(turns).toBeGreaterThan(0);
});

test('the page of keys has the others: nothing that works is untold', () => {
  const used = usedWith(stepScreen, contextWith(buildAfter([], BENCH)));
  const told = stepScreen.hints(used.state, used.at).map(({ key }) => key);
  for (const key of 'vwhgnmtcdblsup?'.split('')) expect(told).toContain(key);
  expect(new Set(told).size).toBe(told.length);
});
