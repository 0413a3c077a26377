import { describe, expect, test } from 'vitest';
import { againFrom, nextFrom, settingsNow } from '../../src/plan/cut-step-now.js';
import type { Step } from '../../src/plan/plan.js';
import type { WorkSoFar } from '../../src/plan/work-so-far.js';
import { step } from '../support/journal.js';
import {
  cutSoFar,
  parting,
  type RackInTest,
  rackPlan,
  spoiling,
  stepAt,
  workOf,
} from '../support/rack-plan.js';

/**
 * Five boards of 96 in for a bench: two give two rails of 45 in each, two give three slats of 30 in each, the last
 * gives a slat and four feet of 14 in. 1/4 in squaring, 1/8 in a cut.
 */
const BENCH: RackInTest = {
  pieces: [
    ['A', 45, 4, 'Rail'],
    ['B', 30, 7, 'Slat'],
    ['C', 14, 4, 'Foot'],
  ],
  store: [[96, 748]],
};

const AS_PLANNED = [
  { name: 'Stop', text: '30 in' },
  { name: 'Mark B', text: '7 x slat: as planned', boards: true },
] as const;

function stopAt(length: number, work: WorkSoFar) {
  const { plan, setting } = rackPlan(BENCH);
  const found = plan.steps.find(({ id }) => id === stepAt(length));
  if (found === undefined) throw new Error(`no stop at ${length} in`);
  const step: Step = { ...found, settings: AS_PLANNED };
  const bench = { plan, setting, work };
  return {
    lines: settingsNow(step, bench).map(({ name, text }) => `${name}: ${text}`),
    next: nextFrom(step, bench),
    again: (mark: string, count = 1) => againFrom({ mark, count }, step, bench),
  };
}

describe('a stop tells its boards by what lies on the rack', () => {
  test('as planned, as long as nothing happened to a board', () => {
    expect(stopAt(30, workOf({ 45: 2 })).lines).toEqual([
      'Stop: 30 in',
      'Mark B: 7 x slat: as planned',
    ]);
  });

  // By hand: bad from 40 in, board 4 keeps one slat and a sixth board takes two. Left beside the pieces: board 3 has
  // 96 - 3/8 - 3 x 30 - 2 x 1/8 = 5-3/8 in, board 4 has 40 - 3/8 - 30 = 9-5/8 in, board 5 has
  // 96 - 3/8 - 30 - 4 x 14-1/8 = 9-1/8 in, the new one 96 - 3/8 - 60-1/8 = 35-1/2 in.
  test('with a board that is bad from 40 in, where each slat comes from and what may be skipped', () => {
    expect(stopAt(30, parting({ 45: 2 }, { place: 3, from: 40, to: 96 })).lines).toEqual([
      'Stop: 30 in',
      'Mark B: 7 x slat: 3 from board 3; 1 each from board 4 up to 40 in and board 5; 2 from a new 8 ft board (to buy)',
      'Knots: room to cut them out, in all: 5-3/8 in on board 3; 9-5/8 in on board 4 up to 40 in; 9-1/8 in on board 5; 35-1/2 in on a new 8 ft board (to buy)',
    ]);
  });

  // By hand: two of three slats of board 3 are cut; of 96 in, 3/8 in of squaring and 2 x 30-1/8 in are gone. What
  // is left is 35-3/8 in for a slat of 30 in.
  test('counts down with the pieces, and calls a begun board the rest of it', () => {
    const bad = parting({ 45: 2 }, { place: 3, from: 40, to: 96 });
    const lines = stopAt(30, { ...bad, ...cutSoFar({ 45: 2, 30: 2 }) }).lines;
    expect(lines[1]).toBe(
      'Mark B: 7 x slat, 5 to go: 1 each from the rest of board 3, board 4 up to 40 in and board 5; 2 from a new 8 ft board (to buy)',
    );
    expect(lines[2]).toContain('in all: 5-3/8 in on the rest of board 3;');
  });

  test('says so where nothing is left to cut', () => {
    const bad = parting({ 45: 2 }, { place: 3, from: 40, to: 96 });
    expect(stopAt(30, { ...bad, ...cutSoFar({ 45: 2, 30: 7 }) }).lines).toEqual([
      'Stop: 30 in',
      'Mark B: 7 x slat, all cut',
    ]);
  });

  // By hand: the second slat of board 3 is lost with nothing sound. A fresh slat needs 30 in and no board has it
  // beside its pieces (5-1/4, 5-1/4 and 9 in are left), so a sixth board gives it, behind all others.
  test('tells from which board the new one of a spoiled slat comes', () => {
    const work = spoiling({ 45: 4, 30: 1 }, { mark: 'B', length: 30, left: 0 });
    const { lines, again } = stopAt(30, work);
    expect(lines[1]).toBe(
      'Mark B: 7 x slat, 6 to go: 1 each from the rest of board 3, board 5 and a new 8 ft board (to buy); 3 from board 4',
    );
    expect(again('B')).toBe('1 x B, cut last: from a new 8 ft board (to buy).');
  });

  // By hand: of board 3 two slats are cut and the third is next; then 40 in of board 4, then board 5, then the new one.
  test.each([
    [2, 'the rest of board 3'],
    [3, 'board 4 up to 40 in'],
    [4, 'board 5'],
    [5, 'a new 8 ft board (to buy)'],
    [7, undefined],
  ] as const)('with %i slats cut, the next one is from %s', (cut, from) => {
    const bad = parting({ 45: 2 }, { place: 3, from: 40, to: 96 });
    expect(stopAt(30, { ...bad, ...cutSoFar({ 45: 2, 30: cut }) }).next).toBe(from);
  });

  // A tired builder has forgotten by then that its like were notched days ago.
  test('says what was cut into the spoiled one and has to be cut into the new one', () => {
    const work = spoiling({ 45: 4, 30: 1 }, { mark: 'B', length: 30, left: 0 });
    const { plan, setting } = rackPlan(BENCH);
    const [cutting] = plan.steps.filter(({ id }) => id === stepAt(30));
    if (cutting === undefined) throw new Error('no stop at 30 in');
    const notching = step('notch-slats', {
      phase: 'notch',
      title: 'Notch the slats',
      bright: ['B/1'],
    });
    const notched = { ...plan, steps: [...plan.steps, notching] };
    const bench = { plan: notched, setting, work: { ...work, done: new Set(['notch-slats']) } };
    expect(againFrom({ mark: 'B', count: 1 }, cutting, bench)).toBe(
      '1 x B, cut last: from a new 8 ft board (to buy). Then again step 4, Notch the slats.',
    );
  });

  test('of another section than the one that a board was bad of, nothing moves', () => {
    const bad = parting({ 45: 2 }, { place: 3, from: 40, to: 96 });
    const other = { ...bad, rackChanges: bad.rackChanges.map(it => ({ ...it, section: '1x3' })) };
    expect(stopAt(30, other).lines[1]).toBe('Mark B: 7 x slat: as planned');
  });
});
