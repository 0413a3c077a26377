import { closeSync, openSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';

export type WallClock = {
  /** What the program has to be started with to follow this clock. */
  readonly env: Readonly<Record<string, string>>;
  /** Moves it on; the program sees it at its next look at the clock. */
  readonly wait: (ms: number) => void;
  /** What the program takes for now. */
  readonly now: () => number;
};

const PRELOAD = new URL('wall-clock.mjs', import.meta.url).href;
const DIGITS = 15;

/**
 * A clock on the wall of the real program that a test moves on, kept in a folder of the test. With a
 * moment to stand at it goes on only when it is moved, in Greenwich, so that screens can be kept.
 */
export function wallClock(folder: string, standsAtMs?: number): WallClock {
  const file = join(folder, 'wall-clock');
  let aheadMs = 0;
  writeFileSync(file, '0'.padStart(DIGITS));
  return {
    env: {
      NODE_OPTIONS: `--import=${PRELOAD}`,
      WALL_CLOCK_FILE: file,
      ...(standsAtMs === undefined ? {} : { WALL_CLOCK_STANDS: String(standsAtMs), TZ: 'UTC' }),
    },
    wait: ms => {
      aheadMs += ms;
      // Written over in place, so that the program never reads an empty file: that would be a jump.
      const handle = openSync(file, 'r+');
      writeSync(handle, String(aheadMs).padStart(DIGITS), 0);
      closeSync(handle);
    },
    now: () => (standsAtMs ?? Date.now()) + aheadMs,
  };
}
