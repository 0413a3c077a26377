import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { screenWhere } from '../support/at-the-bench.js';
import { type BuildOnDisk, benchOnDisk } from '../support/build-on-disk.js';
import { openTerminal, type TestTerminal } from '../support/terminal.js';

let home = '';
let build: BuildOnDisk;
const opened: TestTerminal[] = [];

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
  build = benchOnDisk(home, ({ tally }) => tally !== undefined);
});

afterEach(() => {
  for (const terminal of opened.splice(0)) terminal.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
});

async function window(): Promise<TestTerminal> {
  const terminal = openTerminal({ home });
  opened.push(terminal);
  await terminal.waitFor('Go on with');
  return terminal;
}

async function toTheBench(terminal: TestTerminal): Promise<void> {
  terminal.press('1');
  await terminal.waitFor('Where you left it');
  terminal.press(' ');
  await terminal.waitFor('Space: one more');
}

/** Presses until the count is there: a key just after the step came up is taken for a bounce. */
async function count(terminal: TestTerminal, to: number): Promise<void> {
  for (;;) {
    const { tally } = await screenWhere(terminal, it => it.tally !== undefined, 'a count');
    if (tally?.done === to) return;
    terminal.press(' ');
    await changed(terminal, terminal.screen().join('\n'));
  }
}

/** Until the screen answers, so that no key is pressed twice on a busy machine; three seconds where it does not. */
async function changed(terminal: TestTerminal, before: string): Promise<void> {
  for (let tries = 0; tries < 120 && terminal.screen().join('\n') === before; tries += 1) {
    await new Promise(resolve => setTimeout(resolve, 25));
  }
}

/** A key right after a new step is taken for a bounce, so it is pressed until it is taken. */
async function pressUntil(terminal: TestTerminal, wanted: string): Promise<void> {
  while (!terminal.screen().join('\n').includes(wanted)) {
    terminal.press(' ');
    await new Promise(resolve => setTimeout(resolve, 300));
  }
}

const counted = () => [...build.saved().tallies.values()].reduce((sum, one) => sum + one, 0);

describe('a build that is open in another window', () => {
  test('can be looked at: what is done there is seen here, and nothing is noted here', async () => {
    const first = await window();
    await toTheBench(first);
    const second = await window();
    second.press('1');
    await second.waitFor('LOOKING ONLY: open in another window');
    second.press(' ');
    await second.waitFor('Space: one more');
    await count(first, 1);
    // Any key looks again; one that would note something says that it does not.
    await pressUntil(second, 'Not noted: this build is open in another window');
    await screenWhere(second, ({ tally }) => tally?.done === 1, 'the count of the first window');
    expect(counted()).toBe(1);
  });

  test('taken over, it goes on here, and the first window loses nothing and writes nothing', async () => {
    const first = await window();
    await toTheBench(first);
    await count(first, 1);
    const second = await window();
    second.press('1');
    await second.waitFor('[!] work here');
    second.press('!');
    await second.waitFor('Press ! once more');
    second.press('!');
    await second.waitFor('You work here now');
    second.press(' ');
    // The second cup of screws: what the first window counted stands here too.
    await second.waitFor('Space: one more, 2 of 8 cups');
    await count(second, 2);
    first.press(' ');
    await first.waitFor(/NOT SAVED: another window\s+has\s+taken this build over/);
    first.press(' ');
    await first.waitFor('NOT SAVED');
    expect(counted()).toBe(2);
  });

  test('is free again when the other window went back to the first screen', async () => {
    const first = await window();
    await toTheBench(first);
    first.press('\x1b');
    await first.waitFor('Where you left it');
    first.press('\x1b');
    await first.waitFor('Go on with');
    const second = await window();
    await toTheBench(second);
    await count(second, 1);
  });

  test('is free again when the other window was left, and when it was killed', async () => {
    const first = await window();
    await toTheBench(first);
    first.press('\x03');
    await first.exit;
    const second = await window();
    await toTheBench(second);
    second.kill('SIGKILL');
    await second.exit;
    await toTheBench(await window());
  });
});
