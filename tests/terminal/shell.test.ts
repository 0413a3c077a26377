import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { KEY, openTerminal, type TerminalOptions, type TestTerminal } from '../support/terminal.js';

const START = new URL('../../src/start.mjs', import.meta.url).pathname;
const COLORS = /\x1b\[(?:3[0-7]|9[0-7]|38;|1|7)m/;

let home = '';
const opened: TestTerminal[] = [];

beforeAll(() => {
  // Compiles where need be, so that no test waits for it.
  spawnSync(process.execPath, [START, 'help']);
});

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
});

afterEach(() => {
  for (const terminal of opened.splice(0)) terminal.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
});

async function start(options: Partial<TerminalOptions> = {}) {
  const terminal = openTerminal({ home, ...options });
  opened.push(terminal);
  await terminal.waitFor(/Start a piece|at least/);
  return terminal;
}

describe('in a real terminal', () => {
  test('the program starts from any folder, shows itself, and q gives the screen back', async () => {
    const terminal = await start({ cwd: '/' });
    expect(terminal.isOnUsersScreen()).toBe(false);
    expect(terminal.screen()[0]).toBe('Notchbook');
    terminal.press('q');
    expect((await terminal.exit).code).toBe(0);
    expect(terminal.isOnUsersScreen()).toBe(true);
    expect(terminal.isCursorShown()).toBe(true);
  });

  test('every key of a burst counts: a piece, its first two answers, and all the rest', async () => {
    const terminal = await start();
    terminal.press(`2${KEY.enter}${KEY.enter}${KEY.tab}`);
    await terminal.waitFor('All right so');
  });

  test('a name typed in one burst has all its letters', async () => {
    const terminal = await start();
    terminal.press(`2${KEY.tab}`);
    await terminal.waitFor('All right so');
    terminal.press(KEY.enter);
    await terminal.waitFor('What shall this build be called?');
    terminal.press(`${KEY.backspace.repeat(40)}Roof bench of the Smiths`);
    await terminal.waitFor('> Roof bench of the Smiths');
  });

  test('a new size is painted cleanly, and a small one asks for more', async () => {
    const terminal = await start({ columns: 120, rows: 40 });
    for (const [columns, rows] of [
      [60, 20],
      [100, 30],
      [80, 24],
    ] as const) {
      terminal.resize(columns, rows);
      await terminal.waitFor(new RegExp(`^Notchbook\n[─]{${columns}}\n`));
      const fresh = await start({ columns, rows });
      expect(terminal.screen()).toEqual(fresh.screen());
    }
    terminal.resize(50, 10);
    await terminal.waitFor('Make the window at least 60x20.');
    terminal.resize(80, 24);
    await terminal.waitFor('Start a piece');
  });

  test.each(['SIGTERM', 'SIGHUP', 'SIGINT'] as const)(
    '%s gives screen and cursor back',
    async signal => {
      const terminal = await start();
      terminal.kill(signal);
      await terminal.exit;
      expect(terminal.isOnUsersScreen()).toBe(true);
      expect(terminal.isCursorShown()).toBe(true);
    },
  );

  test('Ctrl-C leaves too', async () => {
    const terminal = await start();
    terminal.press('\x03');
    await terminal.exit;
    expect(terminal.isOnUsersScreen()).toBe(true);
  });

  test('stopped and gone on with, it paints itself and takes keys', async () => {
    const terminal = await start();
    terminal.press('\x1a');
    await new Promise(resolve => setTimeout(resolve, 200));
    terminal.kill('SIGCONT');
    await terminal.waitFor('Start a piece');
    expect(terminal.isOnUsersScreen()).toBe(false);
    terminal.press('?');
    await terminal.waitFor('On every screen');
  });
});

describe('under odd settings', () => {
  test('variables of build machines do not keep it from painting', async () => {
    const terminal = await start({ env: { CI: 'true', CONTINUOUS_INTEGRATION: '1', DEV: 'true' } });
    terminal.press('?');
    await terminal.waitFor('On every screen');
  });

  test('NO_COLOR shows no color, and nothing is lost by it', async () => {
    const terminal = await start({ env: { NO_COLOR: '1' } });
    expect(terminal.written()).not.toMatch(COLORS);
    expect(terminal.screen().join('\n')).toContain('> 1  Look at the example');
    expect(terminal.written()).not.toContain('Warning');
  });

  test('with color there is some', async () => {
    const terminal = await start();
    expect(terminal.written()).toMatch(COLORS);
  });

  test('LANG=C and the Linux console get plain ASCII', async () => {
    const plain = await start({ env: { LANG: 'C' } });
    expect(plain.screen().join('\n')).toMatch(/^[\x20-\x7e\n]*$/);
    const console = await start({ env: { TERM: 'linux' } });
    expect(console.screen().join('\n')).toMatch(/^[\x20-\x7e\n]*$/);
    // The console would print a title instead of keeping it.
    expect(console.written()).not.toContain('\x1b]2;');
  });

  test('without a home folder it starts all the same', async () => {
    const terminal = await start({ env: { HOME: '', NOTCHBOOK_HOME: '', TMPDIR: home } });
    expect(terminal.screen()[2]).toContain('No home folder was found');
  });

  test('a pipe gets print instead of screens', () => {
    const { stdout, status } = spawnSync(process.execPath, [START, 'help'], { encoding: 'utf8' });
    expect(stdout).toContain('notchbook plan RECIPE');
    expect(stdout).not.toContain('\x1b');
    expect(status).toBe(0);
  });
});
