import { describe, expect, test } from 'vitest';
import { statusLine } from '../../src/ui/head-lines.js';
import { contextOf, urgentLines } from '../../src/ui/program.js';
import type { Ask, Key } from '../../src/ui/screen.js';
import { topPage } from '../../src/ui/session.js';
import { remainingMinutes } from '../../src/workbook/timers.js';
import type { Timer } from '../../src/workbook/workbook.js';
import { Bench, type ProgramOptions, programOn, START_MS, stepDone } from '../support/program.js';

const OPEN: readonly Ask[] = [{ kind: 'open-build', id: 'porch' }];
const SPACE: Key = { name: 'space' };
const ENTER: Key = { name: 'enter' };
/** Minutes that a timer has left. */
const remainingAt = (nowMs: number) => (timer: Timer) => remainingMinutes(timer, nowMs);

const MINUTE = 60_000;

/** A build is open; space records a step as done. */
function atWork(options: ProgramOptions = {}) {
  return programOn({
    asks: OPEN,
    askFor: (key, bench) =>
      key.name === 'space' ? [{ kind: 'record', events: [stepDone(bench.nowMs)] }] : [],
    ...options,
  });
}

function withTimer(lastsMinutes: number, options: ProgramOptions = {}) {
  const timer = { timer: 'clamp', name: 'Clamps', then: 'Take them off.', step: 'screw' };
  const { bench, session } = programOn({
    asks: OPEN,
    askFor: (key, { nowMs }) =>
      key.name === 'space'
        ? [
            {
              kind: 'record',
              events: [{ kind: 'timer-started', atMs: nowMs, lastsMinutes, ...timer }],
            },
          ]
        : [],
    ...options,
  });
  session.press(SPACE);
  return { bench, session };
}

describe('an event is on disk before it is seen', () => {
  test('a step that was saved counts as done', () => {
    const { bench, session } = atWork();
    session.press(SPACE);
    expect(bench.saved.at(-1)?.events.at(-1)).toEqual(stepDone(START_MS));
    expect(session.snapshot().build?.progress.done.size).toBe(1);
    expect(session.snapshot().saving).toEqual({ kind: 'saved', atMs: START_MS });
  });

  test('when the disk refuses, it is said on every screen and tried again at the next key', () => {
    const { bench, session } = atWork();
    bench.saving = { ok: false, problem: 'the disk is full' };
    session.press(SPACE);
    expect(bench.saved).toHaveLength(0);
    expect(urgentLines(session.snapshot())[0]?.text).toContain('NOT SAVED: the disk is full');
    expect(session.snapshot().build?.progress.done.size).toBe(1);
    session.press({ name: 'up' });
    expect(urgentLines(session.snapshot())[0]?.text).toContain('NOT SAVED');
    bench.saving = { ok: true };
    session.press({ name: 'up' });
    expect(bench.saved.at(-1)?.events.at(-1)?.kind).toBe('step-done');
    expect(urgentLines(session.snapshot())).toEqual([]);
  });

  test('quitting with unsaved steps has to be asked for twice', () => {
    const { bench, session } = programOn({
      asks: OPEN,
      askFor: (key, { nowMs }) => {
        if (key.name === 'space') return [{ kind: 'record', events: [stepDone(nowMs)] }];
        return key.name === 'escape' ? [{ kind: 'quit' }] : [];
      },
    });
    bench.saving = { ok: false, problem: 'the disk is full' };
    session.press(SPACE);
    session.press({ name: 'escape' });
    expect(bench.quits).toBe(0);
    session.press({ name: 'escape' });
    expect(bench.quits).toBe(1);
  });

  test('a burst of keys in one turn loses none of them', () => {
    const { bench, session } = atWork();
    for (let i = 0; i < 50; i += 1) session.press(SPACE);
    expect(bench.saved).toHaveLength(50);
    // The journal of the build began with one entry of its own.
    expect(session.snapshot().build?.workbook.events).toHaveLength(51);
  });
});

describe('enter twice', () => {
  test('within a quarter second counts once where enter can not be taken back', () => {
    const quits = (waitMs: number, confirms: boolean) => {
      const { bench, session } = programOn({
        asks: OPEN,
        confirms,
        askFor: key => (key.name === 'enter' ? [{ kind: 'quit' }] : []),
      });
      session.press(ENTER);
      bench.wait(waitMs);
      session.press(ENTER);
      return bench.quits;
    };
    expect(quits(100, true)).toBe(1);
    expect(quits(300, true)).toBe(2);
    expect(quits(100, false)).toBe(2);
  });
});

describe('timers', () => {
  test('ring at the end and twice more, a minute apart', () => {
    const { bench, session } = withTimer(10);
    const bells = Array.from({ length: 15 }, () => {
      bench.wait(MINUTE);
      session.tick();
      return bench.bells;
    });
    expect(bells).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 2, 3, 3, 3, 3]);
  });

  test('stop ringing at any key, and stay on the screen until tab says "heard"', () => {
    const { bench, session } = withTimer(10);
    bench.wait(10 * MINUTE);
    session.tick();
    session.press({ name: 'up' });
    bench.wait(MINUTE);
    session.tick();
    expect(bench.bells).toBe(1);
    expect(urgentLines(session.snapshot())[0]?.text).toBe(
      'TIME IS UP: Clamps, ready 1 min ago. Take them off.',
    );
    session.press({ name: 'tab' });
    expect(urgentLines(session.snapshot())).toEqual([]);
    expect(bench.saved.at(-1)?.events.at(-1)?.kind).toBe('timer-silenced');
  });

  test('ring once, not three times, after the lid was shut for an hour', () => {
    const { bench, session } = withTimer(10);
    bench.nowMs += 60 * MINUTE;
    session.tick();
    expect(bench.bells).toBe(1);
  });

  test('of another build ring too, and tab is enough to have heard them', () => {
    const bench = new Bench();
    const then = 'Wipe off what shines.';
    const timers = [{ name: 'Sealer', endsAtMs: START_MS + 5 * MINUTE, then }];
    bench.lines = [shelfLine('deck', { timers })];
    const { session } = programOn({ bench });
    bench.wait(5 * MINUTE);
    session.tick();
    expect(bench.bells).toBe(1);
    const told = urgentLines(session.snapshot()).map(({ text }) => text);
    expect(told.join(' ')).toBe('TIME IS UP: deck, Sealer, ready now. Wipe off what shines.');
    session.press({ name: 'tab' });
    expect(urgentLines(session.snapshot())).toEqual([]);
  });

  test('of another build ring no more once somebody has said "heard" in the window where it is open', () => {
    const bench = new Bench();
    const timers = [{ name: 'Sealer', endsAtMs: START_MS + 5 * MINUTE, then: '' }];
    bench.lines = [shelfLine('deck', { timers })];
    const { session } = programOn({ bench });
    bench.wait(5 * MINUTE);
    session.tick();
    bench.lines = [shelfLine('deck')];
    bench.wait(MINUTE);
    session.tick();
    expect(urgentLines(session.snapshot())).toEqual([]);
    expect(bench.bells).toBe(1);
  });

  test('in the line at the top one sees the own clamps first, and of another build its name', () => {
    const timers = [{ name: 'Clamps', endsAtMs: START_MS + 5 * MINUTE }];
    const elsewhere = () => {
      const bench = new Bench();
      bench.lines = [shelfLine('deck', { timers })];
      return bench;
    };
    const without = statusLine(programOn({ bench: elsewhere() }).session.snapshot(), 80);
    expect(without).toContain(' deck: 5 min left ');
    const own = withTimer(40, { bench: elsewhere() });
    expect(statusLine(own.session.snapshot(), 80)).toContain(' Clamps: 40 min left +1 ');
  });

  test('a clock that was set back is told', () => {
    const { bench, session } = withTimer(10);
    bench.nowMs -= 30 * MINUTE;
    bench.steadyMs += 1000;
    session.tick();
    expect(urgentLines(session.snapshot())[0]?.text).toContain('set back');
  });

  test('a clock set back in the middle of a wait makes it no longer: 10 min stay 10 min', () => {
    const { bench, session } = withTimer(10);
    bench.nowMs -= 24 * 60 * MINUTE;
    session.tick();
    bench.nowMs += 9 * MINUTE;
    bench.steadyMs += 9 * MINUTE;
    session.tick();
    const ringsIn = () => session.snapshot().build?.progress.timers.map(remainingAt(bench.nowMs));
    expect(ringsIn()).toEqual([1]);
    expect(session.snapshot().saving.kind).toBe('saved');
  });
});

describe('from screen to screen', () => {
  const shown = (session: ReturnType<typeof programOn>['session']) =>
    topPage(session.snapshot()).name;

  test('a build opens at its recap and comes back to the start', () => {
    const { session } = programOn({ asks: OPEN });
    expect(shown(session)).toBe('resume');
    session.press({ name: 'escape' });
    expect(shown(session)).toBe('home');
  });

  test('going to a screen that is open already goes back to it', () => {
    const names = { character: 'plan', space: 'step' } as const;
    const { session } = programOn({
      asks: OPEN,
      askFor: ({ name }) =>
        name === 'character' || name === 'space' ? [{ kind: 'go', to: names[name] }] : [],
    });
    for (let i = 0; i < 10; i += 1) {
      session.press({ name: 'character', text: 'p' });
      session.press(SPACE);
    }
    expect(session.snapshot().pages.map(({ name }) => name)).toEqual([
      'home',
      'resume',
      'plan',
      'step',
    ]);
  });

  test('sent home after a pause, the start shows the build as it lies on the shelf now', () => {
    const bench = new Bench();
    const { session } = programOn({
      bench,
      asks: OPEN,
      askFor: () => [{ kind: 'go', to: 'home' }],
    });
    expect(session.snapshot().shelf).toEqual([]);
    bench.lines = [shelfLine('porch')];
    session.press(SPACE);
    expect(shown(session)).toBe('home');
    expect(session.snapshot().shelf.map(({ id }) => id)).toEqual(['porch']);
  });

  describe('a build that another window has open', () => {
    function looking() {
      const bench = new Bench();
      bench.held = true;
      bench.lines = [shelfLine('porch')];
      const record = { kind: 'record', events: [stepDone(START_MS)] } as const;
      const { session } = programOn({
        bench,
        askFor: key => (key.name === 'space' ? [record] : [{ kind: 'leave' }]),
      });
      session.press({ name: 'chosen', id: 'build/porch' });
      return { bench, session };
    }
    const head = (session: ReturnType<typeof programOn>['session']) =>
      urgentLines(session.snapshot())
        .map(({ text, key }) => `${text} ${key}`)
        .join('\n');

    test('is looked at, and every screen says so', () => {
      const { session } = looking();
      expect(shown(session)).toBe('resume');
      expect(head(session)).toContain('LOOKING ONLY: open in another window [!] work here');
    });

    test('nothing is noted here, and that is said', () => {
      const { bench, session } = looking();
      session.press({ name: 'space' });
      expect(bench.saved).toEqual([]);
      expect(session.snapshot().build?.progress.done.size).toBe(0);
      expect(head(session)).toContain('Not noted');
    });

    test('with the clock set back, no wait is said to be moved: that is for the other window to do', () => {
      const { bench, session } = looking();
      bench.nowMs -= 2 * 3_600_000;
      session.tick();
      expect(bench.saved).toEqual([]);
      expect(head(session)).toContain('clock of this computer was set back: check glue and sealer');
      expect(head(session)).not.toMatch(/waits were moved|Not noted/);
    });

    test('is taken over when asked twice; then it is noted here', () => {
      const { bench, session } = looking();
      session.press({ name: 'character', text: '!' });
      expect(head(session)).toContain('Press ! once more');
      session.press({ name: 'space' });
      expect(bench.saved).toEqual([]);
      session.press({ name: 'character', text: '!' });
      expect(shown(session)).toBe('resume');
      expect(head(session)).not.toContain('LOOKING');
      session.press({ name: 'space' });
      expect(bench.saved).toHaveLength(1);
    });

    test('that was closed there meanwhile needs no second asking', () => {
      const { bench, session } = looking();
      bench.held = false;
      session.press({ name: 'character', text: '!' });
      session.press({ name: 'space' });
      expect(bench.saved).toHaveLength(1);
    });
  });

  test('the plan is looked at from the step and left to it, where the build was begun from the plan', () => {
    const asks: readonly Ask[] = [
      { kind: 'start-build', recipe: 'duckboard', name: 'New', answers: {} },
      { kind: 'go', to: 'step' },
      { kind: 'go', to: 'plan' },
    ];
    const { session } = programOn({ asks });
    expect(shown(session)).toBe('plan');
    session.press({ name: 'escape' });
    expect(shown(session)).toBe('step');
  });

  test('on the first screen no build is open: another window may have it', () => {
    const { bench, session } = programOn({ asks: OPEN });
    session.press({ name: 'escape' });
    expect(bench.closed).toHaveLength(1);
    expect(session.snapshot().build).toBeUndefined();
  });

  test('one that is not on disk stays open on the first screen until it is', () => {
    const bench = new Bench();
    const record = { kind: 'record', events: [stepDone(START_MS)] } as const;
    const { session } = programOn({
      bench,
      asks: OPEN,
      askFor: key => (key.name === 'space' ? [record] : [{ kind: 'leave' }]),
    });
    bench.saving = { ok: false, problem: 'the disk is full' };
    session.press({ name: 'space' });
    session.press({ name: 'escape' });
    expect(session.snapshot().build?.progress.done.size).toBe(1);
    bench.saving = { ok: true };
    session.press({ name: 'up' });
    expect(bench.saved.at(-1)?.events).toHaveLength(2);
  });

  test('the page of keys knows the screen beneath', () => {
    const { session } = programOn({
      asks: [...OPEN, { kind: 'go', to: 'step' }, { kind: 'go', to: 'keys' }],
    });
    expect(contextOf(session.snapshot()).under).toEqual({
      title: 'the step screen',
      hints: [{ key: 'x', does: 'something on step' }],
    });
  });

  test('keys do nothing while the window is too small to see what they do', () => {
    const { bench, session } = atWork();
    session.resize({ columns: 50, rows: 10 });
    session.press(SPACE);
    expect(bench.saved).toHaveLength(0);
    session.resize({ columns: 80, rows: 24 });
    session.press(SPACE);
    expect(bench.saved).toHaveLength(1);
  });
});

function shelfLine(name: string, about = {}) {
  return {
    id: name,
    name,
    recipe: 'duckboard',
    example: false,
    putAway: false,
    begun: true,
    stepsDone: 1,
    stepsInAll: 3,
    savedAtMs: START_MS,
    timers: [],
    ...about,
  };
}
