import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Step } from '../../src/plan/plan.js';
import { type BenchScreen, pressed, screenWhere } from '../support/at-the-bench.js';
import { benchOnDisk } from '../support/build-on-disk.js';
import { planOf, project } from '../support/projects.js';
import { KEY, openTerminal, type TestTerminal } from '../support/terminal.js';
import { type WallClock, wallClock } from '../support/wall-clock.js';

let home = '';
let clockFolder = '';
let clock: WallClock;
let terminal: TestTerminal;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
  clockFolder = mkdtempSync(join(tmpdir(), 'notchbook-clock-'));
  clock = wallClock(clockFolder);
});

afterEach(() => {
  terminal.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
  rmSync(clockFolder, { recursive: true, force: true });
});

/** The rows of a briefing that are seen: below the three that say for what it is. */
function cautionRows({ text, move }: BenchScreen): readonly string[] {
  const lines = text.split('\n');
  const first = lines.findIndex(line => /^The lead (?:reads|asks|shows)/.test(line)) + 2;
  return lines.slice(first, lines.indexOf(move));
}

/** Two windows of the same text as one, where the second begins in the first. */
function joined(read: readonly string[], window: readonly string[]): readonly string[] {
  const overlap = window.findIndex((_, rest) => {
    const shared = window.slice(0, window.length - rest);
    return read.slice(-shared.length).join('\n') === shared.join('\n');
  });
  return [...read, ...(overlap < 0 ? window : window.slice(window.length - overlap))];
}

/** Reads all cautions of a step aloud, one key after the other; what was to be read. */
async function readCautions(first: BenchScreen): Promise<string> {
  let screen = first;
  let read: readonly string[] = [];
  while (/read on|read aloud|answered well/.test(screen.move)) {
    read = joined(read, cautionRows(screen));
    clock.wait(1000);
    screen = await pressed(terminal, ' ');
  }
  return read.join(' ').replace(/\s+/g, ' ');
}

/** Reads the page of cautions to its end, where each says where it is from. */
async function readSources(): Promise<string> {
  let screen = await pressed(terminal, 'c');
  let read: readonly string[] = [];
  while (/^Cautions\b/m.test(screen.text)) {
    const lines = screen.text.split('\n');
    const first = lines.findIndex(line => line.startsWith('Cautions')) + 2;
    const window = lines.slice(
      first,
      lines.findIndex(line => line.startsWith('[space]')),
    );
    read = joined(read, window.slice(0, window.findLastIndex(line => line !== '') + 1));
    clock.wait(1000);
    screen = await pressed(terminal, ' ');
  }
  return read.join(' ').replace(/\s+/g, ' ');
}

/** All that a step says is on the screen, or the screen says that there is more. */
function expectWhole({ text }: BenchScreen, { title, say, look }: Step): void {
  if (/lines \d+-\d+ of \d+/.test(text)) return;
  expect(text.match(/^- /gm) ?? [], title).toHaveLength(say.length);
  expect(text.match(/^\[[ x]\] \d/gm) ?? [], title).toHaveLength(look.length);
}

describe('nothing is left out of sight', () => {
  test.each([
    [80, 24],
    [60, 20],
  ])(
    'in a window of %i by %i: cautions, what to do, what to look at',
    async (columns, rows) => {
      const { steps } = benchOnDisk(home, () => true);
      const { cautions } = planOf(project('planter-bench'));
      terminal = openTerminal({ home, columns, rows, env: clock.env });
      await terminal.waitFor('Go on with');
      terminal.press('1');
      await terminal.waitFor('Space: to the bench');
      terminal.press(' ');
      for (const [index, step] of steps.entries()) {
        await screenWhere(terminal, ({ move }) => move !== '', 'a step');
        terminal.press('l');
        await screenWhere(terminal, ({ text }) => text.includes('Which step?'), 'the list');
        terminal.press(`${index + 1}${KEY.enter}`);
        const isShown = (it: BenchScreen) => it.step === index + 1 && it.move !== '';
        const shown = await screenWhere(terminal, isShown, step.title);
        clock.wait(1000);
        const read = await readCautions(shown);
        const heard = steps.slice(0, index).flatMap(({ care }) => care);
        const sources: string[] = [];
        const fresh = step.care.filter(id => !heard.includes(id));
        for (const { title, lines, source } of cautions.filter(({ id }) => fresh.includes(id))) {
          for (const text of [title, ...lines]) expect(read).toContain(text);
          sources.push(`From: ${source}`);
        }
        expectWhole(await screenWhere(terminal, ({ move }) => move !== '', 'the step'), step);
        const from = sources.length === 0 ? '' : await readSources();
        for (const source of sources) expect(from).toContain(source);
      }
    },
    60_000,
  );

  test('the answer that enter would take is seen at every question of a small window', async () => {
    terminal = openTerminal({ home, columns: 60, rows: 20, env: clock.env });
    await terminal.waitFor('Start a piece');
    terminal.press('2');
    const place = (text: string) => /question (\d+) of \d+/.exec(text)?.[1];
    let screen = await screenWhere(terminal, ({ text }) => place(text) === '1', 'a question');
    while (place(screen.text) !== undefined) {
      expect(screen.text).toMatch(/^> \S/m);
      const before = place(screen.text);
      terminal.press(KEY.enter);
      screen = await screenWhere(terminal, ({ text }) => place(text) !== before, 'the next');
    }
    expect(screen.text).toContain('> All right so');
  });
});
