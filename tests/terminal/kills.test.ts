import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import xterm from '@xterm/headless';
import { afterEach, expect, test } from 'vitest';
import type { Step } from '../../src/plan/plan.js';
import type { Progress } from '../../src/workbook/workbook.js';
import { type BenchScreen, readBench, screenWhere } from '../support/at-the-bench.js';
import { benchOnDisk } from '../support/build-on-disk.js';
import { KEY, openTerminal, type TestTerminal } from '../support/terminal.js';
import { type WallClock, wallClock } from '../support/wall-clock.js';

const KILLS = 50;
/** Builds under way at once, each with its own folder and its share of the kills: a core for each. */
const SEEDS = [20_261_103, 20_261_104];
const MOST_KEYS = 12;
/** The longest wait between the last key of a life and its end; a key is answered in 10 to 30 ms. */
const MOST_WAIT_MS = 30;
/** Ink closes every frame with this; what comes after the last one was cut off by the kill. */
const FRAME_END = '\x1b[?2026l';

const folders: string[] = [];
const opened: TestTerminal[] = [];

function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'notchbook-'));
  folders.push(folder);
  return folder;
}

afterEach(() => {
  for (const terminal of opened.splice(0)) terminal.kill('SIGKILL');
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** Numbers from 0 to 1, the same ones for the same seed: Park and Miller's generator of 1988. */
function chances(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** What the screens have shown as done, over all lives. */
type Shown = {
  readonly counts: Map<number, number>;
  readonly ticks: Map<number, number>;
  furthest: number;
};

function note(shown: Shown, { step, tally, ticked }: BenchScreen): void {
  if (step === undefined) return;
  const raise = (to: Map<number, number>, by: number) =>
    to.set(step, Math.max(by, to.get(step) ?? 0));
  raise(shown.counts, tally?.done ?? 0);
  raise(shown.ticks, ticked);
  shown.furthest = Math.max(shown.furthest, step);
}

/** Everything that was shown is in the save; a step that was gone past is done. */
function expectKept(shown: Shown, steps: readonly Step[], progress: Progress, life: string): void {
  steps.forEach(({ id, look }, index) => {
    const number = index + 1;
    if (number < shown.furthest) expect(progress.done, life).toContain(id);
    const made = look.filter((_, check) => progress.checks.has(`${id}#${check}`)).length;
    expect(made, `${life}, ticks of step ${number}`).toBeGreaterThanOrEqual(
      shown.ticks.get(number) ?? 0,
    );
    expect(
      progress.tallies.get(id) ?? 0,
      `${life}, count of step ${number}`,
    ).toBeGreaterThanOrEqual(shown.counts.get(number) ?? 0);
  });
}

/** The last whole frame that stood on the screen when the program was killed. */
async function lastFrame(written: string): Promise<BenchScreen> {
  const screen = new xterm.Terminal({ cols: 80, rows: 24, allowProposedApi: true });
  const whole = written.slice(0, written.lastIndexOf(FRAME_END) + FRAME_END.length);
  await new Promise<void>(resolve => screen.write(whole, resolve));
  const { active } = screen.buffer;
  return readBench(
    Array.from({ length: 24 }, (_, row) => active.getLine(row)?.translateToString(true) ?? ''),
  );
}

type Life = {
  readonly home: string;
  readonly clock: WallClock;
  readonly chance: () => number;
  readonly shown: Shown;
};

/** From the shell to the step that was left, past the recap. */
async function toTheBench({ home, clock }: Life): Promise<TestTerminal> {
  const terminal = openTerminal({ home, env: clock.env });
  opened.push(terminal);
  await screenWhere(terminal, ({ text }) => text.includes('Go on with'), 'the first screen');
  terminal.press('1');
  await screenWhere(terminal, ({ text }) => text.includes('Where you left it'), 'the recap');
  terminal.press(' ');
  await screenWhere(terminal, ({ step }) => step !== undefined, 'the step that was left');
  clock.wait(1000);
  return terminal;
}

/** One life of the program: some keys, then kill -9 in the middle of whatever it does. */
async function live(life: Life): Promise<void> {
  const { clock, chance, shown } = life;
  const terminal = await toTheBench(life);
  note(shown, readBench(terminal.screen()));
  const keys = 1 + Math.floor(chance() * MOST_KEYS);
  for (let key = 0; key < keys; key += 1) {
    const { isRinging } = readBench(terminal.screen());
    clock.wait(1000);
    terminal.press(isRinging ? KEY.tab : ' ');
    await new Promise(resolve => setTimeout(resolve, chance() * MOST_WAIT_MS));
  }
  terminal.kill('SIGKILL');
  await terminal.exit;
  note(shown, await lastFrame(terminal.written()));
}

/** One build from its first step on, killed again and again. */
async function buildUnderFire(seed: number, kills: number): Promise<void> {
  const home = newFolder();
  const build = benchOnDisk(home, () => true);
  const shown: Shown = { counts: new Map(), ticks: new Map(), furthest: 0 };
  const life = { home, clock: wallClock(newFolder()), chance: chances(seed), shown };
  for (let kill = 1; kill <= kills; kill += 1) {
    await live(life);
    expectKept(shown, build.steps, build.saved(), `seed ${seed}, kill ${kill}`);
  }
  expect(readdirSync(build.folder).filter(name => name.includes('broken'))).toEqual([]);
  // The keys did get somewhere: a build that stands still would lose nothing either.
  expect(shown.furthest).toBeGreaterThan(kills / 8);
}

test(`nothing that was shown is lost by ${KILLS} kills (seeds ${SEEDS.join(', ')})`, async () => {
  await Promise.all(SEEDS.map(seed => buildUnderFire(seed, KILLS / SEEDS.length)));
}, 120_000);
