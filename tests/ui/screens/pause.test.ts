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

const LAID = {
  kind: 'record',
  events: [{ kind: 'rags-laid', atMs: TUESDAY_MS }],
};

function paused(note: string) {
  return [
    { kind: 'record', events: [{ kind: 'paused', atMs: TUESDAY_MS, step: 'seal', note }] },
    { kind: 'go', to: 'home' },
  ];
}

describe('leaving the bench', () => {
  /** After a coat: rags, the timer, cover, glue to have, tools (see before-leaving). */
  test('a clicker alone gets through: no note, each thing seen to, home', () => {
    const down = (count: number) => pressed(Array(count).fill('page-down').join(' ')).asks;
    expect(down(6)).toEqual([LAID]);
    expect(down(7)).toEqual([LAID, ...paused('')]);
  });

  /** Field case F36: rags out flat or drowned must be ticked before the session can close. */
  test('p does not leave before the rags are seen to, and they are in the journal', () => {
    const used = pressed('enter p');
    expect(used.asks).toEqual([]);
    expect(pauseScreen.hints(used.state, used.at).map(({ key }) => key)).not.toContain('p');
    expect(used.press('space').press('p').asks).toEqual([LAID, ...paused('')]);
  });

  test('a second press on what is in the journal changes nothing', () => {
    expect(pressed('enter 1 1').asks).toEqual([LAID]);
  });

  test('a space on the empty line means no note', () => {
    const used = usedWith(pauseScreen, contextWith(buildAfter(SEALED)));
    const { state } = pauseScreen.press(used.state, { name: 'typed', text: ' ' }, used.at);
    expect(state).toMatchObject({ stage: 'leave', note: '' });
  });

  test('the note goes with the pause', () => {
    expect(pressed('typed:brads enter space p').asks).toEqual([LAID, ...paused('brads')]);
  });

  test('a line is ticked by its number and unticked by it', () => {
    expect(pressed('enter 2').state.seenTo).toEqual(['timer:seal/dwell']);
    expect(pressed('enter 2 2').state.seenTo).toEqual([]);
  });

  test('n goes back to the note, which is still there', () => {
    expect(pressed('typed:brads enter n').state).toMatchObject({ stage: 'note', note: 'brads' });
  });

  test('a note that was entered is kept, though one goes back to work after all', () => {
    const kept = { kind: 'note-written', atMs: TUESDAY_MS, step: 'seal', text: 'blunt' };
    expect(pressed('typed:blunt enter escape').asks).toEqual([
      { kind: 'record', events: [kept] },
      { kind: 'leave' },
    ]);
  });

  test('escape goes back to work and records nothing', () => {
    expect(pressed('enter escape').asks).toEqual([{ kind: 'leave' }]);
    expect(pressed('escape').asks).toEqual([{ kind: 'leave' }]);
  });
});
