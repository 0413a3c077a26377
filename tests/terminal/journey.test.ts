import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buildFiles } from '../../src/files/build-files.js';
import { findWorkbook } from '../../src/files/load-workbook.js';
import { progressOf } from '../../src/workbook/progress.js';
import { type BenchScreen, pressed, screenWhere, workUntil } from '../support/at-the-bench.js';
import { planOf, project } from '../support/projects.js';
import { KEY, openTerminal, type TestTerminal } from '../support/terminal.js';
import { type WallClock, wallClock } from '../support/wall-clock.js';

const DAY_MS = 24 * 60 * 60_000;
const SECOND_MS = 1000;
const PAGES = [
  'Drawing',
  'About',
  'Fit',
  'Cuts',
  'Buy',
  'Gaps',
  'Screws',
  'Tools',
  'Time',
  'Steps',
];

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

function start() {
  terminal = openTerminal({ home, env: clock.env });
}

/** Nothing is cut off: all rows but the last are the program's, and no text ends in dots. */
function lookWhole({ text }: BenchScreen): void {
  const lines = text.split('\n');
  expect(lines).toHaveLength(24);
  expect(lines[23]).toBe('');
  expect(text).not.toMatch(/…|\.\.\./);
}

async function see(wanted: string): Promise<BenchScreen> {
  return screenWhere(terminal, ({ text }) => text.includes(wanted), wanted);
}

/** The question that is asked now, or nothing at the review. */
async function question(): Promise<string | undefined> {
  const { text } = await screenWhere(
    terminal,
    screen => /question \d+ of \d+|All right so/.test(screen.text),
    'a question',
  );
  return /question \d+ of/.test(text) ? text.split('\n')[3] : undefined;
}

/** The interview. One answer is typed wrong first, one question is gone back to; from the saw on the usual will do. */
async function answerQuestions(): Promise<readonly string[]> {
  const asked: string[] = [];
  for (let say = await question(); say !== undefined; say = await question()) {
    asked.push(say);
    if (say.includes('room is there along the wall')) {
      terminal.press('ten');
      await see('! ');
      // Enter does not go on: what is typed next is still typed here.
      terminal.press(`${KEY.enter}${KEY.backspace.repeat(3)}11 ft`);
      await see('132 in, that is 3353 mm');
    }
    if (say.includes('How high are the planters') && asked.filter(it => it === say).length === 1) {
      await pressed(terminal, KEY.escape);
      await see('How wide is each planter');
      continue;
    }
    if (say.includes('clear seat between the planters')) {
      terminal.press('5 ft');
      // 5 x 12 in, 60 x 25.4 mm.
      await see('60 in, that is 1524 mm');
    }
    await pressed(terminal, say.includes('Which saw') ? KEY.tab : KEY.enter);
  }
  return asked;
}

/** Down the list to an answer that was typed, then on to the name. */
async function reviewAndName(name: string): Promise<void> {
  await see('All right so');
  const row = /clear seat .* 60 in$/m;
  for (let { text } = await pressed(terminal, KEY.down); !row.test(text); ) {
    ({ text } = await pressed(terminal, KEY.down));
  }
  terminal.press('\x1b[H');
  await see('> All right so');
  await pressed(terminal, KEY.enter);
  terminal.press(`${KEY.backspace.repeat(40)}${name}`);
  await see(`> ${name}`);
  clock.wait(SECOND_MS);
  terminal.press(KEY.enter);
  await see('start building');
}

/** All pages of the plan, one press after the other, until the first comes round again. */
async function lookThroughPlan(): Promise<ReadonlySet<string>> {
  const seen = new Set<string>();
  for (let screen = await see('start building'); ; screen = await pressed(terminal, ' ')) {
    lookWhole(screen);
    const page = /\[(?:\d )?([A-Z][a-z ]+)\]/.exec(screen.text)?.[1] ?? 'none';
    if (page === 'Drawing' && seen.size > 1) return seen;
    // A seat of 5 ft between two planters of 18 in, told at the top of the page.
    if (page === 'About' && !seen.has(page)) expect(screen.text).toMatch(/Overall +96 in x/);
    seen.add(page);
  }
}

/** A note for next time, everything seen to, the door locked, the program left. */
async function lockUp(note: string): Promise<void> {
  await pressed(terminal, 'p');
  terminal.press(note);
  await see(`> ${note}`);
  await pressed(terminal, KEY.enter);
  for (let { move } = await see('Before you leave'); !move.includes('lock up'); ) {
    ({ move } = await pressed(terminal, ' '));
  }
  clock.wait(SECOND_MS);
  await pressed(terminal, ' ');
  await see('Go on with');
  terminal.press('q');
  expect((await terminal.exit).code).toBe(0);
}

/** The program started anew, days later, and the build opened; its recap. */
async function comeBack(days: number): Promise<BenchScreen> {
  clock.wait(days * DAY_MS);
  start();
  await see('Go on with');
  terminal.press('1');
  return see('Where you left it');
}

async function takeBack(words: RegExp): Promise<BenchScreen> {
  expect((await pressed(terminal, 'u')).text).toMatch(words);
  return pressed(terminal, 'u');
}

async function goToStep(number: number): Promise<BenchScreen> {
  await pressed(terminal, 'l');
  terminal.press(`${number}${KEY.enter}`);
  return screenWhere(terminal, ({ step }) => step === number, `step ${number}`);
}

const at = (done: number, least: number) => (screen: BenchScreen) =>
  screen.tally !== undefined && screen.tally.all >= least && screen.tally.done === done;

test('a bench from the first question to the last step, over three evenings', async () => {
  start();
  const builder = {
    get terminal() {
      return terminal;
    },
    clock,
    look: lookWhole,
  };
  await see('Start a piece');
  terminal.press('2');
  expect(await answerQuestions()).toContain('How long is the clear seat between the planters?');
  await reviewAndName('Roof bench');
  expect([...(await lookThroughPlan())]).toEqual(expect.arrayContaining(PAGES));
  clock.wait(SECOND_MS);
  await pressed(terminal, KEY.enter);
  await screenWhere(terminal, ({ step }) => step === 1, 'the first step');

  // The first evening: in the middle of a count, one piece taken back.
  await workUntil(builder, at(4, 6));
  const first = await takeBack(/Take back: .*\?/);
  expect(first.tally?.done).toBe(3);
  const ahead = (first.step ?? 0) + 2;
  expect((await goToStep(ahead)).step).toBe(ahead);
  await goToStep(first.step ?? 0);
  await lockUp('the stop is still set');

  // The second: goes on at the same count; clamps are on when it ends.
  const recap = await comeBack(2);
  expect(recap.text).toMatch(/Your note +the stop is still set/);
  expect(recap.text).toMatch(new RegExp(`3 of ${first.tally?.all} (?:pieces|cups)`));
  expect(recap.text).toContain(`Step ${first.step}: `);
  const second = await pressed(terminal, ' ');
  expect([second.step, second.tally]).toEqual([first.step, first.tally]);
  await workUntil(builder, ({ move }) => move.includes('start the timer'));
  expect((await pressed(terminal, ' ')).text).toContain('Clamps on the end panels: 1 h left');
  const half = await workUntil(builder, at(2, 3));
  await lockUp('two are in');

  // The third, three days later: the clamps have long been ready.
  const later = await comeBack(3);
  expect(later.text).toMatch(/Your note +two are in/);
  expect(later.text).toMatch(/Time is up +Clamps on the end panels, ready 2 d 2\d h ago/);
  expect(later.isRinging).toBe(true);
  expect((await pressed(terminal, KEY.tab)).isRinging).toBe(false);
  const third = await pressed(terminal, ' ');
  expect([third.step, third.tally]).toEqual([half.step, half.tally]);
  await workUntil(builder, ({ text }) => text.startsWith('Finished'));
  expect(terminal.screen().join('\n')).not.toContain('Still to wait for');
  await lockUp('give the owner the care sheet');

  start();
  await see('Roof bench');
  expect(terminal.screen().join('\n')).toMatch(/1 {2}Roof bench +finished/);
  expectAllDone();
}, 120_000);

/** The file, read by itself, agrees with what was done at the bench. */
function expectAllDone(): void {
  const found = findWorkbook(buildFiles(join(home, 'builds'), 'roof-bench').main);
  if (found.state !== 'fine') throw new Error(`the save is ${found.state}`);
  const { workbook } = found;
  const { steps } = planOf(project(workbook.recipe), workbook.answers);
  const { done, tallies, checks } = progressOf(workbook.events);
  // 5 ft of 304.8 mm.
  expect(workbook.answers.seat_length).toEqual({ kind: 'length', value: 5 * 304.8 });
  expect([...done].sort()).toEqual(steps.map(({ id }) => id).sort());
  for (const { id, tally, look } of steps) {
    expect(tallies.get(id)).toBe(tally?.count);
    look.forEach((_, number) => {
      expect(checks).toContain(`${id}#${number}`);
    });
  }
  const started = workbook.events.flatMap(it => (it.kind === 'timer-started' ? it.timer : []));
  const waits = started.filter(id => !id.endsWith('/open.time'));
  expect(waits).toEqual(steps.flatMap(({ timers }) => timers.map(({ id }) => id)));
  // Counted on the plan: two end panels glued and filled, the seat rails in one go, eight planter panels glued and filled.
  expect(started.length - waits.length).toBe(2 + 2 + 1 + 8 + 8);
}
