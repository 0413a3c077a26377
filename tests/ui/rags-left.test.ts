import { describe, expect, test } from 'vitest';
import { perform } from '../../src/ui/asks.js';
import { opener } from '../../src/ui/page.js';
import { contextOf, type Program } from '../../src/ui/program.js';
import { homeScreen } from '../../src/ui/screens/home/screen.js';
import { resumeScreen } from '../../src/ui/screens/resume/screen.js';
import { SCREENS } from '../../src/ui/screens.js';
import type { Event } from '../../src/workbook/events.js';
import { buildAfter, TUESDAY_MS } from '../support/open-build.js';
import { Bench, programOn } from '../support/program.js';
import { viewLines } from '../support/screen-page.js';

const COAT: Event = { kind: 'step-done', atMs: TUESDAY_MS, step: 'seal' };
const LAID: Event = { kind: 'rags-laid', atMs: TUESDAY_MS };

/** The program at the step screen of a build after these events. */
function atStep(events: readonly Event[]) {
  const bench = new Bench();
  const { session } = programOn({ bench, asks: [{ kind: 'open-build', id: 'porch' }] });
  const means = { services: bench.services, screens: { ...SCREENS, home: opener(homeScreen) } };
  const program: Program = { ...session.snapshot(), build: buildAfter(events) };
  return { bench, program, means };
}

/** Field case F36: what an oily rag needs is not forgotten because somebody left by another door. */
describe('leaving a build with oily rags by another way than a pause', () => {
  test('the first screen says what to do with them', () => {
    const { program, means } = atStep([COAT]);
    const after = perform(program, { kind: 'go', to: 'home' }, means);
    expect(after.build).toBe(undefined);
    expect(after.notice).toMatch(/flat and single outdoors, or under water in a metal can/);
  });

  test('quitting has to be asked for twice', () => {
    const { bench, program, means } = atStep([COAT]);
    const warned = perform(program, { kind: 'quit' }, means);
    expect(bench.quits).toBe(0);
    expect(warned.notice).toMatch(/Quit once more/);
    perform(warned, { kind: 'quit' }, means);
    expect(bench.quits).toBe(1);
  });

  test('whoever only looks in on it, with another window at work, is not held up', () => {
    const { bench, program, means } = atStep([COAT]);
    const looking: Program = { ...program, saving: { kind: 'looking' } };
    expect(perform(looking, { kind: 'go', to: 'home' }, means).notice).toBe(undefined);
    const resume = contextOf(looking);
    const seen = viewLines(resumeScreen, resumeScreen.open(resume), resume).join('\n');
    expect(seen).toContain('So far');
    expect(seen).not.toContain('Find them now');
    perform(looking, { kind: 'quit' }, means);
    expect(bench.quits).toBe(1);
  });

  test.each([
    ['they are laid out', [COAT, LAID]],
    ['nothing was sealed', []],
  ])('%s: nobody is held up', (_, events) => {
    const { bench, program, means } = atStep(events);
    expect(perform(program, { kind: 'go', to: 'home' }, means).notice).toBe(undefined);
    perform(program, { kind: 'quit' }, means);
    expect(bench.quits).toBe(1);
  });
});
