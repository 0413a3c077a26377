import { describe, expect, test } from 'vitest';
import { pauseScreen } from '../../../src/ui/screens/pause/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { buildAfter, contextWith, TUESDAY_MS, usedWith } from '../../support/open-build.js';

const SEALED: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_MS },
  { kind: 'step-visited', atMs: TUESDAY_MS, step: 'seal' },
  {
    kind: 'timer-started',
    atMs: TUESDAY_MS,
    timer: 'seal/dwell',
    name: 'Sealer soaking in',
    lastsMinutes: 15,
    then: 'Wipe everything.',
    step: 'seal',
  },
];

function pressed(keys: string, events: readonly Event[] = SEALED) {
  const used = usedWith(pauseScreen, contextWith(buildAfter(events)));
  for (const key of keys.split(' ')) used.press(key);
  return used;
}

function paused(note: string) {
  return [
    { kind: 'record', events: [{ kind: 'paused', atMs: TUESDAY_MS, step: 'seal', note }] },
    { kind: 'go', to: 'home' },
  ];
}

describe('leaving the bench', () => {
  /** After a coat: rags, the timer, tools (see before-leaving). */
  test('a clicker alone gets through: no note, each thing seen to, home', () => {
    expect(pressed('page-down page-down page-down page-down').asks).toEqual([]);
    expect(pressed('page-down page-down page-down page-down page-down').asks).toEqual(paused(''));
  });

  test('a space on the empty line means no note', () => {
    const used = usedWith(pauseScreen, contextWith(buildAfter(SEALED)));
    const { state } = pauseScreen.press(used.state, { name: 'typed', text: ' ' }, used.at);
    expect(state).toMatchObject({ stage: 'leave', note: '' });
  });

  test('the note goes with the pause', () => {
    expect(pressed('typed:brads enter p').asks).toEqual(paused('brads'));
  });

  test('a line is ticked by its number and unticked by it', () => {
    expect(pressed('enter 2').state.seenTo).toEqual(['timer:seal/dwell']);
    expect(pressed('enter 2 2').state.seenTo).toEqual([]);
  });

  test('n goes back to the note, which is still there', () => {
    expect(pressed('typed:brads enter n').state).toMatchObject({ stage: 'note', note: 'brads' });
  });

  test('escape goes back to work and records nothing', () => {
    expect(pressed('enter escape').asks).toEqual([{ kind: 'leave' }]);
    expect(pressed('escape').asks).toEqual([{ kind: 'leave' }]);
  });
});
