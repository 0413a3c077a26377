import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/measure/inch.js';
import type { Context } from '../../../src/ui/screen.js';
import { mistakeScreen } from '../../../src/ui/screens/mistake/screen.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import { beforeLeaving } from '../../../src/workbook/before-leaving.js';
import type { Event } from '../../../src/workbook/events.js';
import { progressOf } from '../../../src/workbook/progress.js';
import { fromSaved, toSaved } from '../../../src/workbook/saved.js';
import { buildAfter, contextWith, ROOM, TUESDAY_MS, usedWith } from '../../support/open-build.js';
import { rackPlan, stepAt } from '../../support/rack-plan.js';
import { screenPage, viewLines } from '../../support/screen-page.js';

/** Three rails and a stretcher from two boards of 96 in: rails first, as at the saw. */
const { plan: PLAN, setting: SETTING } = rackPlan({
  pieces: [
    ['A', 45, 3, 'Rail'],
    ['B', 38, 1, 'Stretcher'],
  ],
  store: [[96, 748]],
});

const RAILS = stepAt(45);
const STRETCHER = stepAt(38);

const atMs = TUESDAY_MS;

const STARTED: Event = { kind: 'build-started', atMs };

/** Two of three rails are counted. */
const TWO_RAILS: readonly Event[] = [
  STARTED,
  { kind: 'step-visited', atMs, step: RAILS },
  { kind: 'piece-done', atMs, step: RAILS, count: 2 },
];

/** All is cut. */
const ALL_CUT: readonly Event[] = [
  STARTED,
  { kind: 'step-done', atMs, step: RAILS },
  { kind: 'step-done', atMs, step: STRETCHER },
];

function at(events: readonly Event[], rest: Partial<Context> = {}): Context {
  const build = buildAfter(events, PLAN);
  const answers = { offers: { kind: 'offers', value: SETTING.offers } } as const;
  return contextWith({ ...build, workbook: { ...build.workbook, answers } }, rest);
}

function pressed(keys: string, events: readonly Event[] = TWO_RAILS, rest: Partial<Context> = {}) {
  const used = usedWith(mistakeScreen, at(events, rest));
  for (const key of keys.split(' ')) used.press(key).wait(400);
  return used;
}

function answer(keys: string, events: readonly Event[] = TWO_RAILS) {
  const { stage } = pressed(keys, events).state;
  if (stage.kind !== 'answer') throw new Error(`at ${stage.kind}, not at an answer`);
  return stage.answer;
}

function recordedBy(keys: string, events: readonly Event[] = TWO_RAILS): readonly Event[] {
  return pressed(keys, events).asks.flatMap(ask => (ask.kind === 'record' ? ask.events : []));
}

describe('one key at the step opens it', () => {
  test.each([
    ['at a step', TWO_RAILS],
    ['when all is done', ALL_CUT],
  ])('%s', (_, events) => {
    expect(usedWith(stepScreen, at(events)).press('m').asks).toEqual([
      { kind: 'go', to: 'mistake' },
    ]);
    expect(stepScreen.hints(stepScreen.open(at(events)), at(events))).toContainEqual({
      key: 'm',
      does: 'mistake',
    });
  });
});

describe('which piece', () => {
  test('the one under the saw comes first, then those counted, then what is no piece', () => {
    expect(viewLines(mistakeScreen, pressed('up').state, at(TWO_RAILS)).slice(2)).toEqual([
      '> 1  A  Rail, 45 in: the one just cut, not counted yet',
      '  2  A  Rail, 45 in: one of the 2 counted',
      '  3  No piece is lost: a screw, a notch, glue or sealer',
      '  4  A board came to the rack: bought or found',
    ]);
  });

  test('once all is cut every mark is there', () => {
    const lines = viewLines(mistakeScreen, pressed('up', ALL_CUT).state, at(ALL_CUT));
    expect(lines[2]).toBe('> 1  A  Rail, 45 in: one of the 3 counted');
    expect(lines[3]).toBe('  2  B  Stretcher, 38 in: the one counted');
  });
});

describe('the answer', () => {
  // By hand, as with the boards: 40 in of a rail becomes the stretcher, whose place on board 2 is enough.
  test('40 in of a rail serve as the stretcher', () => {
    expect(answer('1 1 4 0 enter').verdict).toBe(
      'It serves elsewhere: cut it down to B stretcher, 38 in. Nothing to buy.',
    );
  });

  // By hand: both boards are used up but for 5-3/8 in and 96 - 3/8 - 45-1/8 - 38-1/8 = 12-3/8 in.
  test('with all cut a rail takes another board, with its price', () => {
    expect(answer('1 1 enter', ALL_CUT).verdict).toBe(
      'It takes another board: 1 x 8 ft of 2x4, 7.48.',
    );
  });

  test('a piece that is still long enough is not lost: nothing is written down', () => {
    expect(answer('1 1 4 5 enter').verdict).toContain('Nothing is lost');
    expect(pressed('1 1 4 5 enter space').asks).toEqual([{ kind: 'leave' }]);
  });

  test.each([
    ['a word', '1 1 a', '! "a" is not a length'],
    [
      'more than any board',
      '1 1 9 9',
      '! That is longer than the longest board of the plan, 8 ft.',
    ],
  ])('%s is refused, and enter does nothing', (_, keys, problem) => {
    const used = pressed(`${keys} enter`);
    expect(used.state.stage.kind).toBe('left');
    expect(viewLines(mistakeScreen, used.state, used.at).join('\n')).toContain(problem);
  });

  test('each kind of slip has its rule page, and space comes back to the answer', () => {
    const titles = ['1', '2', '3', '4'].map(what => {
      const used = pressed(`1 ${what} enter r`);
      return viewLines(mistakeScreen, used.state, used.at)[0];
    });
    expect(titles).toEqual([
      'Cut a little short',
      'Cut on the wrong side of the line',
      'End split by a screw',
      'Cut as its mirror image',
    ]);
    expect(pressed('1 3 enter r space').state.stage.kind).toBe('answer');
  });
});

describe('nothing is written down before it is taken', () => {
  test.each(['escape', '1 escape', '1 1 escape', '1 1 9 escape', '1 1 9 enter escape', '3 escape'])(
    'escape leaves after %s',
    keys => {
      expect(pressed(keys).asks).toEqual([{ kind: 'leave' }]);
    },
  );

  test('a piece not counted yet leaves the count as it was, a counted one takes one off', () => {
    const [uncounted] = recordedBy('1 1 enter space');
    const [counted] = recordedBy('2 1 enter space');
    expect(uncounted).toMatchObject({ kind: 'piece-spoiled', step: RAILS, mark: 'A', good: 2 });
    expect(counted).toMatchObject({ kind: 'piece-spoiled', step: RAILS, mark: 'A', good: 1 });
  });

  test('it is said once more at the step that cuts it, until the new one is counted', () => {
    const events = [...ALL_CUT, ...recordedBy('1 1 enter space', ALL_CUT)];
    const used = usedWith(stepScreen, at(events));
    const lines = () => viewLines(stepScreen, used.state, used.at).join('\n');
    expect(used.state.step).toBe(RAILS);
    expect(lines()).toContain('Again: 1 x A. A new 8 ft board: cut 1 x A');
    used.wait(400).press('space');
    expect(lines()).not.toContain('Again');
  });

  test('what has to be bought is said before one leaves', () => {
    const events = [...ALL_CUT, ...recordedBy('1 1 enter space', ALL_CUT)];
    const { workbook, progress } = buildAfter(events, PLAN);
    const lines = beforeLeaving({ workbook, steps: PLAN.steps, progress, nowMs: atMs });
    expect(lines.find(({ id }) => id === 'buy')?.say).toBe(
      'Buy before next time: 1 x 8 ft of 2x4, 7.48.',
    );
    const before = buildAfter(ALL_CUT, PLAN);
    const quiet = beforeLeaving({ ...before, steps: PLAN.steps, nowMs: atMs });
    expect(quiet.map(({ id }) => id)).not.toContain('buy');
  });

  test('undo at the step takes it back whole', () => {
    const events = [...ALL_CUT, ...recordedBy('1 1 enter space', ALL_CUT)];
    const used = usedWith(stepScreen, at(events)).press('u');
    expect(viewLines(stepScreen, used.state, used.at).join('\n')).toContain(
      'Take back: 1 x A of "Cut 3" was spoiled?',
    );
    used.press('u');
    const { done, tallies, rackChanges } = used.at.build?.progress ?? progressOf([]);
    expect([done.has(RAILS), tallies.get(RAILS), rackChanges]).toEqual([true, undefined, []]);
  });

  test('it is in the saved file, and comes back from it', () => {
    const events = [...ALL_CUT, ...recordedBy('1 1 9 enter space', ALL_CUT)];
    const { workbook } = buildAfter(events, PLAN);
    expect(fromSaved(toSaved(workbook))).toEqual({ ok: true, workbook });
  });
});

describe('a board that came', () => {
  const spoiled = [...ALL_CUT, ...recordedBy('1 1 enter space', ALL_CUT)];

  test('gives the piece that waits for one', () => {
    const came = answer('5 4 8 enter', spoiled);
    expect(came.verdict).toBe('Every piece has a board now: nothing to buy.');
    expect(came.lines[0]).toBe('The added 4 ft board: cut 1 x A 45 in.');
    expect(came.event).toMatchObject({ section: '2x4', length: inches(48), count: 1 });
  });

  test('too short a one is told to be, and what to buy stays', () => {
    expect(answer('5 1 2 enter', spoiled).verdict).toBe('Still to buy: 1 x 8 ft of 2x4, 7.48.');
  });

  test('of no length is refused', () => {
    expect(pressed('5 0 enter', spoiled).state.stage.kind).toBe('board');
    expect(pressed('5 enter', spoiled).state.stage.kind).toBe('board');
  });
});

describe.each([80, 60])('in a window of %i columns', columns => {
  const size = ROOM[columns];
  if (size === undefined) throw new Error('no such window');

  test.each([
    ['piece', 'up'],
    ['left', '2 3 4 0'],
    ['serves', '2 3 4 0 enter'],
    ['rule', '2 3 4 0 enter r'],
  ])('the page %s', async (name, keys) => {
    const { state, at: seen } = pressed(keys, TWO_RAILS, { size });
    await expect(screenPage(mistakeScreen, state, seen)).toMatchFileSnapshot(
      `../../pages/mistake-${name}-${columns}.txt`,
    );
  });

  test('the page of another board', async () => {
    const { state, at: seen } = pressed('1 1 2 0 enter', ALL_CUT, { size });
    await expect(screenPage(mistakeScreen, state, seen)).toMatchFileSnapshot(
      `../../pages/mistake-board-${columns}.txt`,
    );
  });
});

test('a plain terminal has the same in ASCII', () => {
  const used = pressed('2 3 4 0 enter', TWO_RAILS, { ascii: true });
  expect(viewLines(mistakeScreen, used.state, used.at).join('\n')).toMatch(/^[\x00-\x7f]*$/);
});
