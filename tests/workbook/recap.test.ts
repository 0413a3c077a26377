import { describe, expect, test } from 'vitest';
import type { Event } from '../../src/workbook/events.js';
import { currentStep, doneCount, tallyOf } from '../../src/workbook/next-step.js';
import { progressOf } from '../../src/workbook/progress.js';
import { recap } from '../../src/workbook/recap.js';
import { build, clampsOn, HOUR, MINUTE, step, TUESDAY_14 } from '../support/journal.js';

const STEPS = [
  step('cut-frame/1', {
    title: 'Cut the posts',
    tally: { of: 'piece', count: 12 },
    look: ['a', 'b'],
  }),
  step('end-corners', { title: 'Glue the end panels', phase: 'assemble' }),
  step('seal', { title: 'Seal', phase: 'finish' }),
];
const START: Event = { kind: 'build-started', atMs: TUESDAY_14 };

function posts(count: number, minutes: number): Event {
  return {
    kind: 'piece-done',
    atMs: TUESDAY_14 + minutes * MINUTE,
    step: 'cut-frame/1',
    count,
  };
}

function stepDone(id: string, minutes: number): Event {
  return { kind: 'step-done', atMs: TUESDAY_14 + minutes * MINUTE, step: id };
}

describe('what comes next', () => {
  test('the first step that is not done', () => {
    const progress = progressOf([START, stepDone('end-corners', 5)]);
    expect(currentStep(STEPS, progress)?.id).toBe('cut-frame/1');
    expect(doneCount(STEPS, progress)).toBe(1);
  });

  test('nothing, when all is done', () => {
    const progress = progressOf(STEPS.map(({ id }, i) => stepDone(id, i)));
    expect(currentStep(STEPS, progress)).toBe(undefined);
  });

  test('steps that a changed answer made vanish do not count', () => {
    const progress = progressOf([START, stepDone('stretcher', 1), stepDone('seal', 2)]);
    expect(doneCount(STEPS, progress)).toBe(1);
  });

  const tallies: readonly (readonly [string, readonly Event[], number])[] = [
    ['none yet', [], 0],
    ['7 of 12', [posts(3, 1), posts(4, 2)], 7],
    ['never more than there are', [posts(3, 1), posts(30, 2)], 12],
    ['all, once the step is done', [posts(3, 1), stepDone('cut-frame/1', 2)], 12],
  ];
  test.each(tallies)('posts cut: %s', (_, events, done) => {
    const [cut = step('none')] = STEPS;
    expect(tallyOf(cut, progressOf(events))).toEqual({ done, count: 12, of: 'piece' });
  });

  test('a step without pieces has no count', () => {
    expect(tallyOf(step('seal'), progressOf([]))).toBe(undefined);
  });
});

describe('coming back after days', () => {
  function recapOf(events: readonly Event[], nowMs: number) {
    return recap(build(events), STEPS, progressOf(events), nowMs);
  }

  test('a new build has nothing behind it', () => {
    expect(recapOf([], TUESDAY_14)).toEqual({
      lastDone: undefined,
      lastHereMs: undefined,
      note: undefined,
      ranOut: [],
      running: [],
      halfDone: [],
      next: STEPS[0],
      stepsDone: 0,
      stepsInAll: 3,
    });
  });

  test('field case F53: done, half done and since when, the note, the next move', () => {
    const events: readonly Event[] = [
      START,
      stepDone('seal', 1),
      posts(7, 20),
      { kind: 'check-made', atMs: TUESDAY_14 + 21 * MINUTE, step: 'cut-frame/1', check: 1 },
      clampsOn(TUESDAY_14 + 30 * MINUTE, 60),
      clampsOn(TUESDAY_14 + 30 * MINUTE, 6000, { timer: 'dry', name: 'Sealer drying' }),
      { kind: 'paused', atMs: TUESDAY_14 + 40 * MINUTE, step: 'cut-frame/1', note: 'stop at 17' },
    ];
    const back = recapOf(events, TUESDAY_14 + 40 * MINUTE + 48 * HOUR);
    expect(back.lastDone).toEqual({
      atMs: TUESDAY_14 + 30 * MINUTE,
      step: 'end-corners',
      title: 'Glue the end panels',
      words: 'timer started: Sealer drying',
    });
    expect(back.lastHereMs).toBe(TUESDAY_14 + 40 * MINUTE);
    expect(back.note?.text).toBe('stop at 17');
    expect(back.ranOut.map(({ timer, endedAtMs }) => [timer.id, endedAtMs])).toEqual([
      ['end-corners/clamp', TUESDAY_14 + 90 * MINUTE],
    ]);
    expect(back.running.map(({ timer }) => timer.id)).toEqual(['dry']);
    expect(back.halfDone).toEqual([
      {
        step: 'cut-frame/1',
        title: 'Cut the posts',
        tally: { done: 7, count: 12, of: 'piece' },
        checksMade: 1,
        checksInAll: 2,
      },
    ]);
    expect(back.next?.id).toBe('cut-frame/1');
  });

  test('what was taken back was not the last thing done', () => {
    const events: readonly Event[] = [
      START,
      posts(2, 5),
      stepDone('end-corners', 9),
      { kind: 'taken-back', atMs: TUESDAY_14 + 10 * MINUTE },
    ];
    expect(recapOf(events, TUESDAY_14 + HOUR).lastDone).toMatchObject({
      step: 'cut-frame/1',
      words: '2 pieces done',
    });
  });

  test('a step that is no longer in the plan is not what was done last', () => {
    const events = [START, posts(1, 5), stepDone('stretcher', 9)];
    expect(recapOf(events, TUESDAY_14 + HOUR).lastDone?.words).toBe('1 piece done');
  });

  test('the newer note counts, and an empty one at the pause does not', () => {
    const note = (minutes: number, text: string): Event => ({
      kind: 'note-written',
      atMs: TUESDAY_14 + minutes * MINUTE,
      step: 'seal',
      text,
    });
    const pause = (minutes: number, text: string): Event => ({
      kind: 'paused',
      atMs: TUESDAY_14 + minutes * MINUTE,
      step: 'seal',
      note: text,
    });
    const left = (...events: Event[]) => recapOf(events, TUESDAY_14 + HOUR).note?.text;
    expect(left(note(1, 'old'), pause(2, 'new'))).toBe('new');
    expect(left(note(1, 'old'), pause(2, ' '))).toBe('old');
    expect(left(pause(1, 'old'), note(2, 'new'))).toBe('new');
  });

  test('a note is told again until its step is done, and after that only in the session it is from', () => {
    const note: Event = {
      kind: 'note-written',
      atMs: TUESDAY_14,
      step: 'seal',
      text: 'the can is in the house',
    };
    const back: Event = { kind: 'resumed', atMs: TUESDAY_14 + 20 * MINUTE };
    const left = (...events: Event[]) => recapOf([START, ...events], TUESDAY_14 + HOUR).note?.text;
    expect(left(note, back)).toBe('the can is in the house');
    expect(left(note, stepDone('seal', 10))).toBe('the can is in the house');
    expect(left(note, stepDone('seal', 10), back)).toBe(undefined);
  });
});
