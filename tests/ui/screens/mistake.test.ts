import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/measure/inch.js';
import type { Context } from '../../../src/ui/screen.js';
import { mistakeScreen } from '../../../src/ui/screens/mistake/screen.js';
import { leavingLines } from '../../../src/ui/screens/pause/state.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { progressOf } from '../../../src/workbook/progress.js';
import { fromSaved, toSaved } from '../../../src/workbook/saved.js';
import { benchBuild, usedOn } from '../../support/measured-build.js';
import {
  allTold,
  buildAfter,
  contextWith,
  ROOM,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
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
    expect(stepScreen.hints(stepScreen.open(at(events)), at(events))).toContainEqual(
      expect.objectContaining({ key: 'm', does: 'mistake' }),
    );
  });
});

describe('which piece', () => {
  test('the one under the saw comes first, then those counted, then what is no piece', () => {
    expect(viewLines(mistakeScreen, pressed('up').state, at(TWO_RAILS)).slice(2)).toEqual([
      '> 1  A  Rail, 45 in: the one just cut, not counted yet',
      '  2  A  Rail, 45 in: one of the 2 counted',
      '  3  A board is bad: split, knots, twisted, not cut yet',
      '  4  No piece is lost: a screw, a notch, glue or sealer',
      '  5  A board came to the rack: bought or found',
    ]);
  });

  test('once all is cut every mark is there', () => {
    const lines = viewLines(mistakeScreen, pressed('up', ALL_CUT).state, at(ALL_CUT));
    expect(lines.slice(1, 4)).toEqual([
      'Pieces by mark.',
      '',
      '> 1  A  Rail, 45 in: one of the 3 counted',
    ]);
    expect(lines[4]).toBe('  2  B  Stretcher, 38 in: the one counted');
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
    expect(lines()).toContain('Again: 1 x A, cut last: from a new 8 ft');
    used.wait(400).press('space');
    expect(lines()).not.toContain('Again');
  });

  test('which board to take stands above what to do, however many boards there are', () => {
    const { plan } = benchBuild();
    const row = plan.steps.find(({ title }) => title.includes('at 18 in'))?.id ?? '';
    const bad = (place: number, from: number): Event => ({
      kind: 'board-spoiled',
      atMs,
      section: '2x4',
      place,
      board: '',
      from: inches(from),
      to: inches(from + 6),
      then: '',
      buy: '',
    });
    const build = benchBuild([
      ...allTold(plan, atMs),
      bad(3, 20),
      bad(5, 40),
      { kind: 'step-visited', atMs, step: row },
    ]);
    const used = usedOn(stepScreen, build);
    const lines = viewLines(stepScreen, used.state, used.at);
    const marks = lines.findIndex(line => line.startsWith('Mark '));
    const say = lines.findIndex(line => line.startsWith('- '));
    expect(lines.filter(line => /^(?:Mark|Knots| {2})/.test(line)).length).toBeGreaterThan(4);
    expect(marks).toBeGreaterThan(0);
    expect(marks).toBeLessThan(say);
  });

  test('taken back, the stop tells its boards as they were planned', () => {
    const before = usedWith(stepScreen, at(ALL_CUT));
    const events = [...ALL_CUT, ...recordedBy('1 1 enter space', ALL_CUT)];
    const after = usedWith(stepScreen, at(events)).press('u').press('u');
    const page = viewLines(stepScreen, after.state, after.at);
    expect(after.at.build?.progress.rackChanges).toEqual([]);
    expect(page.join('\n')).not.toContain('Again');
    expect(page).toEqual(viewLines(stepScreen, { ...before.state, step: RAILS }, before.at));
  });

  test('what has to be bought is said before one leaves', () => {
    const events = [...ALL_CUT, ...recordedBy('1 1 enter space', ALL_CUT)];
    const lines = leavingLines(at(events).build ?? buildAfter(events, PLAN), atMs);
    expect(lines.find(({ id }) => id === 'buy')?.say).toBe(
      'Buy before next time: 1 x 8 ft of 2x4, 7.48.',
    );
    const quiet = leavingLines(buildAfter(ALL_CUT, PLAN), atMs);
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
    const came = answer('6 4 8 enter', spoiled);
    expect(came.verdict).toBe('Every piece has a board now: nothing to buy.');
    expect(came.lines[0]).toBe('The added 4 ft board: cut 1 x A 45 in.');
    expect(came.event).toMatchObject({ section: '2x4', length: inches(48), count: 1 });
  });

  test('too short a one is told to be, and what to buy stays', () => {
    expect(answer('6 1 2 enter', spoiled).verdict).toBe('Still to buy: 1 x 8 ft of 2x4, 7.48.');
  });

  test('of no length is refused', () => {
    expect(pressed('6 0 enter', spoiled).state.stage.kind).toBe('board');
    expect(pressed('6 enter', spoiled).state.stage.kind).toBe('board');
  });
});

describe('a board that is bad before it is cut', () => {
  test('is one of those that lie there, with what was to come from it', () => {
    const used = pressed('3 up');
    expect(viewLines(mistakeScreen, used.state, used.at)).toEqual([
      'Which one is bad?',
      '',
      '> 1  the rest of board 1, 5-3/8 in: nothing planned on it',
      '  2  board 2, 8 ft: 1 x A 45 in, 1 x B 38 in',
    ]);
  });

  // By hand: 96 in bad from 30 to 38 in is 30 in and 58 in. The rail of 45 in comes out of the 58 in, the
  // stretcher of 38 in out of nothing that is left: 58 - 45-1/8 = 12-7/8 in.
  test('keeps what its sound part holds, and the rest takes another board', () => {
    const told = answer('3 2 3 0 - 3 8 enter');
    expect(told.verdict).toBe('It takes another board: 1 x 8 ft of 2x4, 7.48.');
    expect(told.lines.slice(1, 3)).toEqual([
      'Board 2, up to 30 in: 30 in to keep.',
      'Board 2, beyond 38 in: cut 1 x A 45 in.',
    ]);
    expect(told.event).toMatchObject({ kind: 'board-spoiled', section: '2x4', place: 1 });
  });

  // By hand: 96 in to 90 in has 90 - 3/8 - 45-1/8 - 38 = 6-1/2 in over: both stay.
  test('with a split at its far end loses nothing', () => {
    const told = answer('3 2 9 0 - e n d enter');
    expect(told.verdict).toBe('No piece is lost: what is sound of it is enough. Nothing to buy.');
    expect(told.lines[1]).toBe('Board 2, up to 90 in: cut 1 x A 45 in, 1 x B 38 in.');
  });

  test('is read back while it is typed, and what makes no sense is refused', () => {
    const lines = (keys: string) => {
      const used = pressed(keys);
      return viewLines(mistakeScreen, used.state, used.at).join('\n');
    };
    expect(lines('3 2 3 0 - 3 8')).toContain('bad from 30 in to 38 in; sound: 30 in and 58 in');
    expect(lines('3 2 enter')).toContain('another board');
    expect(lines('3 2 3 0 enter')).toContain('! That does not say from where to where.');
    expect(lines('3 2 9 7 - 9 9 enter')).toContain('! The board is only 8 ft long.');
  });

  test('is written down, taken back whole, and comes back from the saved file', () => {
    const events = [...TWO_RAILS, ...recordedBy('3 2 3 0 - 3 8 enter space')];
    const { workbook, progress } = buildAfter(events, PLAN);
    expect(progress.rackChanges).toHaveLength(1);
    expect(fromSaved(toSaved(workbook))).toEqual({ ok: true, workbook });
    const used = usedWith(stepScreen, at(events)).press('u');
    expect(viewLines(stepScreen, used.state, used.at).join('\n')).toContain(
      'Take back: board 2 of 2x4 is bad?',
    );
    used.press('u');
    expect(used.at.build?.progress.rackChanges).toEqual([]);
  });
});

describe('measured again, and short: does it matter?', () => {
  // The step checks the first piece to 1/32 in; nothing of this small plan meets the rail.
  test.each([
    ['4 4 - 3 1 / 3 2', 'Use it: 1/32 in short is no more than a stop gives.', undefined],
    [
      '4 4 . 9 3 7 5',
      'Use it: a gap of 1/16 in does not weaken it.',
      'One A is 1/16 in short, and is used as it is.',
    ],
  ])('%s in of 45 in is used', (typed, verdict, note) => {
    const told = answer(`2 1 ${typed} enter`);
    expect(told.verdict).toBe(verdict);
    expect(told.event?.kind === 'note-written' ? told.event.text : undefined).toBe(note);
  });

  test('1/4 in too short is lost for its place, or all of them are made shorter', () => {
    const told = answer('2 1 4 4 . 7 5 enter');
    expect(told.event?.kind).toBe('piece-spoiled');
    expect(told.lines.at(-1)).toBe(
      'Or cut all 3 of A to 44-3/4 in, if the piece may be that much smaller there and none is built in yet.',
    );
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
    ['bad-boards', '3 up'],
    ['bad-stretch', '3 2 3 0 - 3 8'],
    ['bad-board', '3 2 3 0 - 3 8 enter'],
    ['short', '2 1 4 4 . 9 3 7 5 enter'],
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
