import { afterEach, describe, expect, test } from 'vitest';
import type { ShelfLine } from '../../src/ui/screen.js';
import { topPage } from '../../src/ui/session.js';
import { aMoment, Bench, type ProgramOptions, START_MS, shownOn } from '../support/program.js';

const MINUTE = 60_000;

function build(name: string, about: Partial<ShelfLine> = {}): ShelfLine {
  return {
    id: name.toLowerCase().replaceAll(' ', '-'),
    name,
    recipe: 'duckboard',
    example: false,
    putAway: false,
    begun: true,
    stepsDone: 12,
    stepsInAll: 46,
    savedAtMs: START_MS,
    timers: [],
    ...about,
  };
}

let shown: Awaited<ReturnType<typeof shownOn>>;

async function home(lines: readonly ShelfLine[] = [], options: ProgramOptions = {}) {
  const bench = new Bench();
  bench.lines = lines;
  shown = await shownOn({ bench, ...options });
  return shown;
}

afterEach(() => shown.close());

function screenName() {
  return topPage(shown.session.snapshot()).name;
}

describe('the first screen', () => {
  test('tells a newcomer what this is and where to look first', async () => {
    const { text } = await home();
    expect(text()).toContain('Notchbook asks what you would like to build');
    expect(text()).toContain('New here? The example shows all of it');
    expect(text()).toContain('> 1  Look at the example');
    expect(text()).toContain('[1-9] choose');
  });

  test('shows what is in progress: name, how far, what is next, timers', async () => {
    const timers = [{ name: 'Clamps', endsAtMs: START_MS + 30 * MINUTE, then: 'Off.' }];
    const { text } = await home([build('Roof bench', { next: 'Cut the rails', timers })]);
    expect(text()).toMatch(/> 1 {2}Roof bench +12 of 46 steps +next: Cut the rails/);
    expect(text()).toContain('Roof bench, Clamps: ready 14:30');
    expect(text()).toContain('2  Start another piece');
    expect(text()).not.toContain('New here?');
  });

  test('tells a build with pieces cut and no step done yet from one that nobody has touched', async () => {
    const none = { stepsDone: 0, stepsInAll: 40 };
    const { text } = await home([build('Twelve', none), build('Bare', { ...none, begun: false })]);
    expect(text()).toMatch(/Twelve +begun, 0 of 40 steps/);
    expect(text()).toMatch(/Bare +not begun/);
  });

  test('keeps the example apart from the builds', async () => {
    const { text } = await home([build('Example', { example: true })]);
    expect(text()).not.toContain('Example  ');
    expect(text()).toContain('> 1  Start a piece of your own');
    expect(text()).toContain('2  Look at the example');
    expect(text()).not.toContain('New here?');
  });

  test('says which build can not be opened, and why', async () => {
    const { text } = await home([build('Old', { trouble: 'it is cut off or garbled' })]);
    expect(text()).toContain("can't be opened: it is cut off or garbled");
  });
});

describe('choosing', () => {
  test('a number opens a build at once', async () => {
    await home([build('One'), build('Two')]);
    await shown.press('2');
    expect(screenName()).toBe('resume');
    expect(shown.session.snapshot().build?.workbook.id).toBe('two');
  });

  test('down and enter do the same', async () => {
    await home([build('One'), build('Two')]);
    await shown.press('\x1b[B');
    await shown.until('> 2');
    // The menu hears of its own move only after it was painted.
    await aMoment(100);
    await shown.press('\r');
    expect(shown.session.snapshot().build?.workbook.id).toBe('two');
  });

  test('a new piece begins with its questions; one project leaves nothing to choose', async () => {
    await home();
    await shown.press('2');
    expect(screenName()).toBe('interview');
  });

  test('q quits, and so does the last line', async () => {
    await home();
    await shown.press('q');
    await shown.press('3');
    expect(shown.bench.quits).toBe(2);
  });

  test('with many builds the older ones are a list of their own', async () => {
    const names = Array.from({ length: 40 }, (_, i) => `Bench ${i + 1}`);
    await home(names.map(name => build(name)));
    expect(shown.text()).toContain('7  All builds (40)');
    await shown.press('7');
    expect(shown.text()).toContain('1/40');
    await shown.press('\x1b[6~');
    expect(shown.text()).toContain('15/40');
    await shown.press('\x1b[F', '\r');
    expect(shown.session.snapshot().build?.workbook.name).toBe('bench-40');
  });

  test('the question mark shows the keys, escape comes back', async () => {
    await home();
    await shown.press('?');
    expect(shown.text()).toContain('On every screen');
    expect(shown.text()).toContain('NOT SAVED');
    await shown.press('\x1b');
    await shown.until('Start a piece');
    expect(screenName()).toBe('home');
  });
});

describe('all builds', () => {
  async function allBuilds(lines: readonly ShelfLine[]) {
    await home(lines);
    await shown.press(String(lines.length + 2));
    await shown.until('[f] as one file');
  }

  test('one gets another name; nothing happens before enter', async () => {
    await allBuilds([build('One'), build('Two')]);
    await shown.press('n');
    await shown.until('New name > One');
    await shown.press('\x1b[C', ...' for the roof');
    expect(shown.bench.lines.map(({ name }) => name)).toEqual(['One', 'Two']);
    await shown.press('\r');
    expect(await shown.until('> One for the roof')).toContain('[n] new name');
  });

  test('what is typed takes the place of the old name, and nothing typed keeps it', async () => {
    await allBuilds([build('One'), build('Two')]);
    await shown.press('n', ...'Uno', '\r');
    await shown.until('> Uno');
    await shown.press('n', '\r');
    expect(await shown.until('[n] new name')).toContain('> Uno');
  });

  test('escape keeps the old name', async () => {
    await allBuilds([build('One')]);
    await shown.press('n');
    await shown.until('New name > One');
    await shown.press(...'xyz', '\x1b');
    await shown.until('All builds');
    expect(shown.bench.lines.map(({ name }) => name)).toEqual(['One']);
  });

  test('one that is put away leaves the first screen, and can be brought back', async () => {
    await allBuilds([build('One'), build('Two')]);
    await shown.press('a');
    // It goes to the end of the list; the other one is marked now.
    expect(await shown.until('(put away) One')).toMatch(/> Two[\s\S]*\(put away\) One/);
    await shown.press('\x1b');
    await shown.until('Go on with');
    expect(shown.text()).not.toContain('One');
    expect(shown.text()).toContain('All builds (2)');
    await shown.press('3');
    await shown.until('(put away) One');
    await shown.press('\x1b[B');
    await shown.until('[a] bring back');
    await shown.press('a');
    await shown.until('> Two');
    expect(shown.text()).not.toContain('put away) ');
  });

  test('another like it begins at the answers, all of them given', async () => {
    await allBuilds([build('One')]);
    await shown.press('c');
    await shown.until('All right so');
    expect(screenName()).toBe('interview');
  });

  test('as one file it is written where one works, and told where', async () => {
    await allBuilds([build('One')]);
    await shown.press('f');
    expect(await shown.until('Written to')).toContain('/garage/one.notchbook.json');
    expect(shown.text()).toContain('notchbook import');
  });
});

describe('in any window', () => {
  test.each([
    [60, 20],
    [80, 24],
    [120, 40],
  ])('%i by %i: nothing is wider or higher than the frame', async (columns, rows) => {
    const names = Array.from({ length: 12 }, (_, i) => `A build with a rather long name ${i + 1}`);
    await home(
      names.map(name => build(name)),
      { size: { columns, rows } },
    );
    expect(shown.lines().length).toBeLessThanOrEqual(rows - 1);
    expect(Math.max(...shown.lines().map(line => line.length))).toBeLessThanOrEqual(columns);
    expect(shown.text()).toContain('[q] quit');
  });

  test('50 by 10 asks for a larger window and for nothing else', async () => {
    await home([], { size: { columns: 50, rows: 10 } });
    expect(shown.text()).toBe('Make the window at least 60x20.');
  });

  test('plain ASCII has no other characters', async () => {
    await home([build('Bänk “½”')], { ascii: true });
    expect(shown.text()).toMatch(/^[\x20-\x7e\n]*$/);
  });
});
