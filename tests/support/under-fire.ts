import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import xterm from '@xterm/headless';
import type { Progress } from '../../src/workbook/workbook.js';
import { type BenchScreen, readBench, screenWhere } from './at-the-bench.js';
import { type BuildOnDisk, benchOnDisk } from './build-on-disk.js';
import { KEY, openTerminal, type TestTerminal } from './terminal.js';
import { type WallClock, wallClock } from './wall-clock.js';

/** A build that is killed again and again in the middle of whatever it does. */
export type Siege = {
  /** Sets the keys, the waits and the moments; the same ones for the same seed. */
  readonly seed: number;
  readonly kills: number;
  /** Called after every kill with how many there were. */
  readonly onKill?: (kills: number) => void;
};

/** What came of it; each loss in words that name seed and kill. */
export type Toll = {
  readonly kills: number;
  readonly lost: readonly string[];
  readonly unreadable: readonly string[];
  /** What the journals hold in the end: a build that stands still would lose nothing either. */
  readonly events: number;
};

const MOST_KEYS = 12;
/** Idle machines answer a key in 10 to 30 ms; a busy one is given the time that it takes itself. */
const LEAST_WAIT_MS = 30;
const MOST_WAIT_MS = 1000;
/** One life in so many leaves a note first. */
const NOTE_EVERY = 6;
/** Ink closes every frame with this; what comes after the last one was cut off by the kill. */
const FRAME_END = '\x1b[?2026l';

/** What the screens of one build have shown as done, over all lives. */
type Shown = {
  readonly counts: Map<number, number>;
  readonly ticks: Map<number, number>;
  readonly notes: string[];
  furthest: number;
};

/** One build, from its first step to its last. */
type Site = {
  readonly home: string;
  readonly clockFolder: string;
  readonly clock: WallClock;
  readonly build: BuildOnDisk;
  readonly shown: Shown;
};

type Life = Site & { readonly chance: () => number; readonly number: number };

/** Numbers from 0 to 1, the same ones for the same seed: Park and Miller's generator of 1988. */
function chances(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function newSite(): Site {
  const home = mkdtempSync(join(tmpdir(), 'notchbook-'));
  const clockFolder = mkdtempSync(join(tmpdir(), 'notchbook-clock-'));
  return {
    home,
    clockFolder,
    clock: wallClock(clockFolder),
    build: benchOnDisk(home, () => true),
    shown: { counts: new Map(), ticks: new Map(), notes: [], furthest: 0 },
  };
}

function cleared({ home, clockFolder }: Site): void {
  for (const folder of [home, clockFolder]) rmSync(folder, { recursive: true, force: true });
}

/** Kills a build as often as that; where it is finished, the next one begins. */
export async function underFire({ seed, kills, onKill }: Siege): Promise<Toll> {
  const chance = chances(seed);
  const lost: string[] = [];
  const unreadable: string[] = [];
  let events = 0;
  let site = newSite();
  try {
    for (let number = 1; number <= kills; number += 1) {
      await live({ ...site, chance, number });
      onKill?.(number);
      const life = `seed ${seed}, kill ${number}`;
      const progress = readAgain(site, life, unreadable);
      if (progress === undefined) continue;
      lost.push(...missing(site, progress).map(what => `${life}: ${what}`));
      if (progress.done.size < site.build.steps.length) continue;
      events += site.build.events().length;
      cleared(site);
      site = newSite();
    }
    events += site.build.events().length;
    return { kills, lost, unreadable, events };
  } finally {
    cleared(site);
  }
}

/** What the save says now; a save that can't be read, or was set aside as damaged, is told. */
function readAgain({ build }: Site, life: string, unreadable: string[]): Progress | undefined {
  const broken = readdirSync(build.folder).filter(name => name.includes('broken'));
  unreadable.push(...broken.map(name => `${life}: ${name}`));
  try {
    return build.saved();
  } catch (error) {
    unreadable.push(`${life}: ${String(error)}`);
    return undefined;
  }
}

/** What was shown and is not in the save. A step that was gone past is done. */
function missing({ build, shown }: Site, progress: Progress): readonly string[] {
  const notes = progress.notes.map(({ text }) => text);
  const steps = build.steps.flatMap(({ id, look }, index) => {
    const number = index + 1;
    const ticks = look.filter((_, check) => progress.checks.has(`${id}#${check}`)).length;
    return [
      ...(number < shown.furthest && !progress.done.has(id) ? [`step ${number} done`] : []),
      ...(ticks < (shown.ticks.get(number) ?? 0) ? [`a tick of step ${number}`] : []),
      ...((progress.tallies.get(id) ?? 0) < (shown.counts.get(number) ?? 0)
        ? [`a count of step ${number}`]
        : []),
    ];
  });
  return [...steps, ...shown.notes.filter(note => !notes.includes(note))];
}

/** One life of the program: some keys, then kill -9 in the middle of whatever it does. */
async function live(life: Life): Promise<void> {
  const { clock, chance, shown } = life;
  const terminal = openTerminal({ home: life.home, env: clock.env });
  try {
    await toTheBench(terminal, clock);
    note(shown, readBench(terminal.screen()));
    if (chance() < 1 / NOTE_EVERY) await leaveNote(terminal, life);
    const keys = 1 + Math.floor(chance() * MOST_KEYS);
    const answerMs = await firstKey(terminal, life);
    for (let key = 1; key < keys; key += 1) {
      pressNext(terminal, life);
      await new Promise(resolve => setTimeout(resolve, chance() * answerMs));
    }
  } finally {
    terminal.kill('SIGKILL');
    await terminal.exit;
  }
  note(shown, await lastFrame(terminal.written()));
}

/** Presses the first key of a life; how many ms its answer took is the measure for the others. */
async function firstKey(terminal: TestTerminal, life: Life): Promise<number> {
  const before = terminal.screen().join('\n');
  const startMs = performance.now();
  pressNext(terminal, life);
  const took = () => performance.now() - startMs;
  while (terminal.screen().join('\n') === before && took() < MOST_WAIT_MS) {
    await new Promise(resolve => setTimeout(resolve, 1));
  }
  return Math.max(LEAST_WAIT_MS, took());
}

/** A minute for every press; where there is only to wait, a day goes by. */
function pressNext(terminal: TestTerminal, { clock }: Life): void {
  const { isRinging, move } = readBench(terminal.screen());
  clock.wait(move.startsWith('Wait for') ? 25 * 60 * 60_000 : 60_000);
  terminal.press(isRinging ? KEY.tab : ' ');
}

/** A note is shown as kept when the step is there again. */
async function leaveNote(terminal: TestTerminal, { shown, number }: Life): Promise<void> {
  if (readBench(terminal.screen()).move === '') return;
  const text = `after ${number - 1} kills`;
  terminal.press('n');
  await screenWhere(terminal, ({ move }) => move === '', 'the line for a note');
  terminal.press(text);
  await screenWhere(terminal, screen => screen.text.includes(text), 'what was typed');
  terminal.press(KEY.enter);
  await screenWhere(terminal, ({ move }) => move !== '', 'the step again');
  shown.notes.push(text);
}

/** From the shell to the step that was left, past the recap. */
async function toTheBench(terminal: TestTerminal, clock: WallClock): Promise<void> {
  await screenWhere(terminal, ({ text }) => text.includes('Go on with'), 'the first screen');
  terminal.press('1');
  await screenWhere(terminal, ({ text }) => text.includes('Where you left it'), 'the recap');
  terminal.press(' ');
  await screenWhere(terminal, ({ step }) => step !== undefined, 'the step that was left');
  clock.wait(1000);
}

function note(shown: Shown, { step, tally, ticked }: BenchScreen): void {
  if (step === undefined) return;
  const raise = (to: Map<number, number>, by: number) =>
    to.set(step, Math.max(by, to.get(step) ?? 0));
  raise(shown.counts, tally?.done ?? 0);
  raise(shown.ticks, ticked);
  shown.furthest = Math.max(shown.furthest, step);
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
