import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import xterm from '@xterm/headless';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Step } from '../../src/plan/plan.js';
import type { Progress } from '../../src/workbook/workbook.js';
import { type BenchScreen, readBench, screenWhere } from '../support/at-the-bench.js';
import { benchOnDisk } from '../support/build-on-disk.js';
import { KEY, openTerminal, type TestTerminal } from '../support/terminal.js';
import { type WallClock, wallClock } from '../support/wall-clock.js';

const KILLS = 50;
const SEED = 20261103;
const MOST_KEYS = 14;
/** The longest wait between the last key of a life and its end; a key is answered in 10 to 30 ms. */
const MOST_WAIT_MS = 40;
/** Ink closes every frame with this; what comes after the last one was cut off by the kill. */
const FRAME_END = '\x1b[?2026l';

let home = '';
let clockFolder = '';
let terminal: TestTerminal | undefined;

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'notchbook-'));
  clockFolder = mkdtempSync(join(tmpdir(), 'notchbook-clock-'));
});

afterEach(() => {
  terminal?.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
  rmSync(clockFolder, { recursive: true, force: true });
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

/** From the shell to the step that was left, past the recap. */
async function toTheBench(clock: WallClock): Promise<TestTerminal> {
  const opened = openTerminal({ home, env: clock.env });
  terminal = opened;
  await opened.waitFor('Go on with', 15_000);
  opened.press('1');
  await opened.waitFor('Where you left it', 15_000);
  opened.press(' ');
  await screenWhere(opened, ({ step }) => step !== undefined, 'the step that was left');
  clock.wait(1000);
  return opened;
}

type Life = { readonly clock: WallClock; readonly chance: () => number; readonly shown: Shown };

/** One life of the program: some keys, then kill -9 in the middle of whatever it does. */
async function live({ clock, chance, shown }: Life): Promise<void> {
  const opened = await toTheBench(clock);
  note(shown, readBench(opened.screen()));
  const keys = 1 + Math.floor(chance() * MOST_KEYS);
  for (let key = 0; key < keys; key += 1) {
    const { isRinging } = readBench(opened.screen());
    clock.wait(1000);
    opened.press(isRinging ? KEY.tab : ' ');
    await new Promise(resolve => setTimeout(resolve, chance() * MOST_WAIT_MS));
  }
  opened.kill('SIGKILL');
  await opened.exit;
  note(shown, await lastFrame(opened.written()));
}

test(`nothing that was shown is lost by ${KILLS} kills (seed ${SEED})`, async () => {
  const build = benchOnDisk(home, () => true);
  const shown: Shown = { counts: new Map(), ticks: new Map(), furthest: 0 };
  const clock = wallClock(clockFolder);
  const chance = chances(SEED);
  for (let life = 1; life <= KILLS; life += 1) {
    await live({ clock, chance, shown });
    expectKept(shown, build.steps, build.saved(), `kill ${life}`);
  }
  expect(readdirSync(build.folder).filter(name => name.includes('broken'))).toEqual([]);
  // The keys did get somewhere: a build that stands still would lose nothing either.
  expect(shown.furthest).toBeGreaterThan(KILLS / 10);
}, 120_000);
