import { describe, expect, test } from 'vitest';
import type { Event } from '../../src/workbook/events.js';
import { progressOf } from '../../src/workbook/progress.js';
import { nextToTakeBack } from '../../src/workbook/taken-back.js';
import { MINUTE, TUESDAY_14 } from '../support/journal.js';

const STEP = 'cut-boards/2x4@1143.00';

const CUT: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_14 },
  { kind: 'piece-done', atMs: TUESDAY_14 + MINUTE, step: STEP, count: 4 },
  { kind: 'step-done', atMs: TUESDAY_14 + 2 * MINUTE, step: STEP },
  { kind: 'step-visited', atMs: TUESDAY_14 + 3 * MINUTE, step: 'notch-rails' },
];

const SPOILED: Event = {
  kind: 'piece-spoiled',
  atMs: TUESDAY_14 + 4 * MINUTE,
  step: STEP,
  section: '2x4',
  mark: 'A',
  what: 'split',
  left: 965.2,
  good: 3,
  then: 'The rest of board 2: cut 1 x A 45 in.',
  buy: '',
};

const ADDED: Event = {
  kind: 'board-added',
  atMs: TUESDAY_14 + 5 * MINUTE,
  section: '2x4',
  length: 2438.4,
  count: 1,
};

const BACK: Event = { kind: 'taken-back', atMs: TUESDAY_14 + 6 * MINUTE };

describe('a piece is spoiled', () => {
  test('its step is open again with one fewer, and is where one goes on', () => {
    const { tallies, done, lastStep, rackChanges } = progressOf([...CUT, SPOILED]);
    expect(tallies.get(STEP)).toBe(3);
    expect(done.has(STEP)).toBe(false);
    expect(lastStep).toBe(STEP);
    expect(rackChanges).toMatchObject([{ kind: 'spoiled', mark: 'A', left: 965.2, what: 'split' }]);
  });

  test('the new one is counted like any other', () => {
    const remade: Event = { kind: 'piece-done', atMs: TUESDAY_14 + MINUTE, step: STEP, count: 1 };
    expect(progressOf([...CUT, SPOILED, remade]).tallies.get(STEP)).toBe(4);
  });

  test('how far all cutting was is kept with each change', () => {
    const { rackChanges } = progressOf([...CUT, SPOILED, ADDED]);
    expect(rackChanges.map(({ tallies }) => tallies.get(STEP))).toEqual([3, 3]);
    expect(rackChanges[1]).toMatchObject({ kind: 'added', section: '2x4', length: 2438.4 });
  });

  test('it can be taken back, and so can a board that came', () => {
    expect(nextToTakeBack([...CUT, SPOILED, ADDED])).toEqual(ADDED);
    expect(progressOf([...CUT, SPOILED, ADDED, BACK]).rackChanges).toHaveLength(1);
    const before = progressOf(CUT);
    const { tallies, done, rackChanges, lastStep } = progressOf([...CUT, SPOILED, BACK]);
    expect({ tallies, done, rackChanges, lastStep }).toEqual({
      tallies: before.tallies,
      done: before.done,
      rackChanges: [],
      lastStep: 'notch-rails',
    });
  });
});
