import { NOT_TAKEN } from '../../src/ui/typed-ahead.js';
import { KEY, type TestTerminal } from './terminal.js';
import type { WallClock } from './wall-clock.js';

/** The screen of a step as a person reads it. */
export type BenchScreen = {
  readonly text: string;
  /** The same as one line, however it is wrapped. */
  readonly words: string;
  /** From "Step 6 of 36" in the first row. */
  readonly step: number | undefined;
  readonly steps: number | undefined;
  /** What the big key does now: the line over the keys. */
  readonly move: string;
  readonly tally: { readonly done: number; readonly all: number } | undefined;
  /** Checks that are ticked. */
  readonly ticked: number;
  readonly isRinging: boolean;
};

const LOOK_MS = 5;
const PATIENCE_MS = 15_000;
const MINUTE_MS = 60_000;

/** What is to be read on a screen, whoever painted it. */
export function readBench(lines: readonly string[]): BenchScreen {
  const place = /^Step (\d+) of (\d+),/.exec(lines[0] ?? '');
  const move = lines.find(line => /^(?:Space: |Wait for )/.test(line)) ?? '';
  // The line over the keys names the next count, not the one reached; "1 of 4 to tell" counts no pieces.
  const tally = /(?<!\S)(\d+) of (\d+) (?!to tell)[a-z]/.exec(
    lines.filter(line => line !== move).join('\n'),
  );
  const text = lines.join('\n');
  return {
    text,
    words: text.replace(/\s+/g, ' '),
    step: place === null ? undefined : Number(place[1]),
    steps: place === null ? undefined : Number(place[2]),
    move,
    tally: tally === null ? undefined : { done: Number(tally[1]), all: Number(tally[2]) },
    ticked: lines.filter(line => /^\[x\] \d/.test(line)).length,
    isRinging: text.includes('[tab] heard'),
  };
}

/** Waits until the screen is as wanted, whatever the machine is busy with; returns it. */
export async function screenWhere(
  terminal: TestTerminal,
  wanted: (screen: BenchScreen) => boolean,
  what: string,
): Promise<BenchScreen> {
  const deadline = Date.now() + PATIENCE_MS;
  for (;;) {
    const screen = readBench(terminal.screen());
    if (terminal.isWhole() && wanted(screen)) return screen;
    if (Date.now() > deadline) throw new Error(`never came: ${what}. It shows:\n${screen.text}`);
    await new Promise(resolve => setTimeout(resolve, LOOK_MS));
  }
}

/** Presses a key and waits until the screen has answered it. */
export async function pressed(terminal: TestTerminal, keys: string): Promise<BenchScreen> {
  const before = terminal.screen().join('\n');
  terminal.press(keys);
  const answer = `an answer to ${JSON.stringify(keys)}`;
  const screen = await screenWhere(terminal, ({ text }) => text !== before, answer);
  const isLeftOut = screen.text.includes(NOT_TAKEN) && !before.includes(NOT_TAKEN);
  // A busy machine may stand after it has painted; who reads this presses again.
  return isLeftOut ? pressed(terminal, keys) : screen;
}

/** A builder at the bench, a minute for every press unless the pace is another. */
export type Builder = {
  readonly paceMs?: number;
  readonly terminal: TestTerminal;
  readonly clock: WallClock;
  /** Called with every screen that is seen. */
  readonly look: (screen: BenchScreen) => void;
};

/** Presses what the screen asks for until it is as wanted. */
export async function workUntil(
  builder: Builder,
  wanted: (screen: BenchScreen) => boolean,
): Promise<BenchScreen> {
  let screen = readBench(builder.terminal.screen());
  while (!wanted(screen)) {
    screen = await nextPress(builder, screen);
    builder.look(screen);
  }
  return screen;
}

async function nextPress(builder: Builder, screen: BenchScreen): Promise<BenchScreen> {
  const { terminal, clock, paceMs = MINUTE_MS } = builder;
  clock.wait(paceMs);
  if (screen.isRinging) return pressed(terminal, KEY.tab);
  // What the day is like: nobody looked, so every line stays empty.
  if (screen.text.startsWith('Is it a day for')) return pressed(terminal, KEY.enter);
  if (!screen.move.startsWith('Wait for')) return pressed(terminal, ' ');
  // Nothing to press: the time goes by, and the program looks at the clock when it is woken.
  clock.wait(waitFor(screen.move));
  terminal.kill('SIGCONT');
  return screenWhere(terminal, ({ text }) => text !== screen.text, 'a look at the clock');
}

/** Clamps are waited for beside the bench, what cures or dries until another day. */
function waitFor(move: string): number {
  if (!move.includes('before this step')) return 5 * MINUTE_MS;
  return move.includes('"Clamps') ? 30 * MINUTE_MS : 25 * 60 * MINUTE_MS;
}
