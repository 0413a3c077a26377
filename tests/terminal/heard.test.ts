import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTerminal, type TestTerminal } from '../support/terminal.js';

let home: string;
let terminal: TestTerminal;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
  const env = { INK_SCREEN_READER: 'true' };
  terminal = openTerminal({ home, env, columns: 120, rows: 40 });
});

afterEach(() => {
  terminal.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
});

/** Signs that lines, bars and pictures are drawn with, more than one of them together. */
const DRAWN = /[─═│├┤┼░█]{2}/;

test('who listens hears no drawn line on the way from the first page to the bench and through the plan', async () => {
  const heard: string[] = [];
  const pages: readonly (readonly [key: string, shows: string | RegExp])[] = [
    ['', 'Look at the example'],
    ['1', 'Where you left it'],
    [' ', /^Step \d+ of/],
    ['b', '[1 Drawing]'],
    ['3', '[3 Fit]'],
    ['4', '[4 Cuts]'],
    ['5', '[5 Buy]'],
    ['9', '[9 Time]'],
  ];
  for (const [key, shows] of pages) {
    if (key !== '') terminal.press(key);
    await terminal.waitFor(shows);
    heard.push(...terminal.screen());
  }
  expect(heard.filter(line => DRAWN.test(line))).toEqual([]);
  // The picture stands beside the checks, and is told in a line of its own.
  expect(heard.filter(line => /^From the front right corner: /.test(line))).toHaveLength(1);
});
