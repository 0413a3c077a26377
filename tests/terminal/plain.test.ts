import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { textWidth } from '../../src/text/width.js';
import { type BenchScreen, screenWhere } from '../support/at-the-bench.js';
import { benchOnDisk } from '../support/build-on-disk.js';
import { projectText } from '../support/projects.js';
import { KEY, openTerminal, type TestTerminal } from '../support/terminal.js';

const START = new URL('../../src/start.mjs', import.meta.url).pathname;
const ASCII = /^[\x20-\x7e\n]*$/;
/** Set Graphics Rendition with a color in it: ECMA-48, 8.3.117. */
const COLOR = /\x1b\[(?:\d+;)*(?:3[0-8]|4[0-8]|9[0-7]|10[0-7])(?:;\d+)*m/;

let home = '';
let terminal: TestTerminal | undefined;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
});

afterEach(() => {
  terminal?.kill('SIGKILL');
  terminal = undefined;
  rmSync(home, { recursive: true, force: true });
});

/** The program with nothing but pipes, in an environment of its own. */
function piped(env: Readonly<Record<string, string>>, ...args: readonly string[]) {
  const { PATH = '' } = process.env;
  const run = spawnSync(process.execPath, [START, ...args], {
    encoding: 'utf8',
    env: { PATH, NOTCHBOOK_HOME: home, ...env },
  });
  return { ...run, lines: run.stdout.split('\n') };
}

describe('on a pipe', () => {
  test('the example plan is printed: no codes, no line over 80 columns, exit 0', () => {
    const { status, stdout, stderr, lines } = piped({ LANG: 'C.UTF-8' });
    expect(status).toBe(0);
    expect(stderr).toBe('');
    expect(stdout).toMatch(/^Bench with planter ends\n/);
    expect(stdout).toContain('Boards to buy');
    expect(stdout).not.toContain('\x1b');
    expect(lines.filter(line => textWidth(line) > 80)).toEqual([]);
  });

  test.each([{ LANG: 'C' }, { LC_ALL: 'POSIX', LANG: 'en_US.UTF-8' }, { TERM: 'dumb' }])(
    'with %o it is plain ASCII',
    env => {
      const { status, stdout } = piped(env);
      expect(status).toBe(0);
      expect(stdout).toMatch(ASCII);
      expect(stdout).toContain('1-1/2 in x 3-1/2 in');
    },
  );

  test('for other programs it says the same whatever the language is', () => {
    const args = ['plan', 'planter-bench', '--as', 'json'];
    expect(piped({ LANG: 'C' }, ...args).stdout).toBe(piped({ LANG: 'C.UTF-8' }, ...args).stdout);
  });

  // Alone, the step before is waited for as well: a recipe that was not checked has tasks in a circle.
  test('a recipe that the plan cannot cope with ends it with a sentence, and no trace', () => {
    const file = join(home, 'recipe.yaml');
    const text = projectText('planter-bench');
    writeFileSync(file, text.replace('before: [end-corners, stand]', 'before: [set-up]'));
    const { status, stdout, stderr } = piped({}, 'plan', file, '--set', 'people=alone');
    expect(status).toBe(1);
    expect(stdout).toBe('');
    expect(stderr.split('\n')).toEqual([
      'Notchbook stopped by a mistake of its own: tasks wait for each other in a circle.',
      'For a recipe of your own, "notchbook check" may say what is wrong in it.',
      '',
    ]);
    expect(piped({}, 'check', file).stderr).toContain('"set-up" is to wait for the step "lay-out"');
  });

  test('a reader that has seen enough ends it without a word', async () => {
    const child = spawn(process.execPath, [START], {
      env: { ...process.env, NOTCHBOOK_HOME: home },
    });
    let complaints = '';
    child.stderr.on('data', (text: Buffer) => {
      complaints += text.toString();
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise(resolve => child.once('close', resolve));
    expect(code).toBe(0);
    expect(complaints).toBe('');
  });
});

/** Home, keys, interview, recap, plan, step, picture, list, timers, mistake, pause: a look at each. */
async function visitAll(env: Readonly<Record<string, string>>): Promise<readonly BenchScreen[]> {
  benchOnDisk(home, ({ firstCheck }) => firstCheck);
  const opened = openTerminal({ home, env });
  terminal = opened;
  const seen: BenchScreen[] = [];
  const visit = async (keys: string, wanted: RegExp) => {
    opened.press(keys);
    seen.push(await screenWhere(opened, ({ text }) => wanted.test(text), String(wanted)));
  };
  await visit('', /Go on with/);
  await visit('?', /On every screen/);
  await visit(`${KEY.escape}`, /Go on with/);
  await visit('2', /Where will it stand/);
  await visit(KEY.escape, /Go on with/);
  await visit('1', /Where you left it/);
  await visit('b', /Front view/);
  for (const page of '234567890') await visit(page, new RegExp(`\\[${page} `));
  await visit(KEY.escape, /Where you left it/);
  await visit(' ', /Space: one more/);
  await visit('v', /next view/);
  await visit(' ', /Space: one more/);
  await visit('w', /back to the step/);
  await visit(' ', /Space: one more/);
  await visit('l', /Which step/);
  await visit(KEY.escape, /Space: one more/);
  await visit('t', /Timers|timers|No timer/);
  await visit(KEY.escape, /Space: one more/);
  await visit('m', /Stop whatever runs/);
  await visit('1', /What happened to/);
  await visit('1', /Nothing typed: none\s+of it/);
  await visit(KEY.enter, /Space: (?:do it so|read on)/);
  await visit(KEY.escape, /Space: one more/);
  await visit('p', /One line for next time/);
  await visit(KEY.enter, /Before you leave/);
  return seen;
}

test('a terminal that can show no screens gets the plan printed too', async () => {
  terminal = openTerminal({ home, rows: 50, env: { TERM: 'dumb' } });
  expect((await terminal.exit).code).toBe(0);
  expect(terminal.written()).toContain('Boards to buy');
  expect(terminal.written()).not.toContain('\x1b');
});

describe('on every screen', () => {
  test('LANG=C shows plain ASCII', async () => {
    for (const { text } of await visitAll({ LANG: 'C' })) expect(text).toMatch(ASCII);
  });

  test('NO_COLOR writes no color, and the marks are still there', async () => {
    const seen = await visitAll({ NO_COLOR: '1' });
    expect(terminal?.written()).not.toMatch(COLOR);
    expect(seen[0]?.text).toContain('> 1  Porch');
    // A pattern that catches nothing would prove nothing.
    terminal?.kill('SIGKILL');
    rmSync(home, { recursive: true, force: true });
    await visitAll({});
    expect(terminal?.written()).toMatch(COLOR);
  });

  test('80 by 24 is filled up to its last row but one, and no wider', async () => {
    for (const { text } of await visitAll({})) {
      const lines = text.split('\n');
      expect(lines).toHaveLength(24);
      expect(lines[23]).toBe('');
      // The keys that work stand in the two rows above.
      expect(lines.slice(21, 23).join(' ')).toMatch(/^\[[^\]]+\] \w/);
      // Ink's own mark for a text that it had to cut; ours is made of three dots.
      expect(text).not.toContain('…');
    }
  });
});
