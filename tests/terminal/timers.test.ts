import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { screenWhere } from '../support/at-the-bench.js';
import { type BuildOnDisk, benchOnDisk } from '../support/build-on-disk.js';
import { KEY, openTerminal, type TestTerminal } from '../support/terminal.js';
import { type WallClock, wallClock } from '../support/wall-clock.js';

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
const HOUR_MS = 60 * MINUTE_MS;
/** A bell by itself; the window's title ends with a string terminator instead. */
const BELL = '\x07';

let home = '';
let clockFolder = '';
let clock: WallClock;
let build: BuildOnDisk;
let terminal: TestTerminal;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
  clockFolder = mkdtempSync(join(tmpdir(), 'notchbook-clock-'));
  clock = wallClock(clockFolder);
  // The first step that waits for something: sealer soaks in for 15 minutes.
  build = benchOnDisk(home, ({ timers }) => timers.length > 1);
});

afterEach(() => {
  terminal.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
  rmSync(clockFolder, { recursive: true, force: true });
});

async function see(wanted: string) {
  return screenWhere(terminal, ({ text }) => text.includes(wanted), wanted);
}

async function start(env: Readonly<Record<string, string>> = {}): Promise<void> {
  terminal = openTerminal({ home, env: { ...clock.env, ...env } });
  await see('Go on with');
}

async function toTheBench(): Promise<void> {
  await start();
  terminal.press('1');
  await see('Where you left it');
  terminal.press(' ');
  await see('Space: start the timer, 15 min: Sealer soaking in');
}

async function startSoaking(): Promise<void> {
  await toTheBench();
  clock.wait(SECOND_MS);
  terminal.press(' ');
  await see('Sealer soaking in: 15 min left');
}

/** The program looks at the clock when the shell lets it go on. */
async function look(): Promise<void> {
  const before = terminal.written().length;
  terminal.kill('SIGCONT');
  await screenWhere(terminal, () => terminal.written().length > before, 'a new picture');
}

describe('a timer', () => {
  test('counts by the wall clock and rings on whatever screen one is', async () => {
    await startSoaking();
    clock.wait(5 * MINUTE_MS);
    await look();
    await see('Sealer soaking in: 10 min left');
    // Off to the plan, two seconds before the end: no key is pressed after it.
    clock.wait(10 * MINUTE_MS - 2 * SECOND_MS);
    terminal.press('b');
    await see('[1 Drawing]');
    expect(terminal.written()).not.toContain(BELL);
    await see('TIME IS UP: Sealer soaking in');
    const { words } = await see('[tab] heard');
    expect(words).toContain('Wipe back everything now, [tab] heard end grain too.');
    expect(words).toContain('[1 Drawing]');
    expect(terminal.written().split(BELL)).toHaveLength(2);
    terminal.press(KEY.tab);
    await screenWhere(terminal, screen => !screen.text.includes('TIME IS UP'), 'silence');
    expect(build.saved().timers).toMatchObject([{ silenced: true }]);
  });

  test('is on disk from its first second, also when the program is killed', async () => {
    await startSoaking();
    terminal.kill('SIGKILL');
    await terminal.exit;
    expect(build.saved().timers).toMatchObject([{ name: 'Sealer soaking in', lastsMinutes: 15 }]);
    clock.wait(6 * MINUTE_MS);
    await start();
    await see('Porch, Sealer soaking in: ready ');
    terminal.press('1');
    const { text } = await see('Where you left it');
    expect(text).toMatch(/Waiting +Sealer soaking in: 9 min left/);
  });

  test('that ran out days ago is told, with what to do, and rings no more', async () => {
    await startSoaking();
    terminal.press('\x03');
    await terminal.exit;
    clock.wait(50 * HOUR_MS);
    await start();
    terminal.press('1');
    const { text } = await see('Where you left it');
    expect(text).toMatch(/Time is up +Sealer soaking in, ready 2 d 1 h ago/);
    expect(text).toContain('Wipe back everything now');
    expect(terminal.written()).not.toContain(BELL);
  });

  test('stays right while the program is stopped', async () => {
    await startSoaking();
    terminal.kill('SIGSTOP');
    clock.wait(20 * MINUTE_MS);
    terminal.kill('SIGCONT');
    await see('TIME IS UP: Sealer soaking in');
  });

  test('a clock that was set back is told, and the wait gets no shorter', async () => {
    await startSoaking();
    clock.wait(-30 * MINUTE_MS);
    await look();
    const { words } = await see('The clock of this computer was set back');
    expect(words).toContain('check glue and sealer against a watch.');
    expect(words).not.toContain('TIME IS UP');
  });
});
