import { linkSync, mkdtempSync, renameSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { mountSmallDisk, type SmallDisk } from '../files/small-disk.js';
import { type BenchScreen, pressed, screenWhere } from '../support/at-the-bench.js';
import { type BuildOnDisk, benchOnDisk } from '../support/build-on-disk.js';
import { openTerminal, type TestTerminal } from '../support/terminal.js';
import { type WallClock, wallClock } from '../support/wall-clock.js';

const DAY_MS = 24 * 60 * 60_000;

let scratch = '';
let clock: WallClock;
let terminal: TestTerminal | undefined;
let disk: SmallDisk | undefined;

beforeEach(() => {
  scratch = mkdtempSync(join(tmpdir(), 'notchbook-'));
  clock = wallClock(scratch);
});

afterEach(async () => {
  terminal?.kill('SIGKILL');
  // It works in a folder of the disk, which can't be taken off before.
  await terminal?.exit;
  terminal = undefined;
  disk?.unmount();
  disk = undefined;
  rmSync(scratch, { recursive: true, force: true });
});

/** At a long count, all cautions heard and nothing to check on the first piece. */
async function atTheCount(home: string) {
  const build = benchOnDisk(
    home,
    ({ tally, firstCheck }) => (tally?.count ?? 0) > 6 && !firstCheck,
  );
  const opened = openTerminal({ home, env: clock.env });
  terminal = opened;
  await opened.waitFor('Go on with');
  opened.press('1');
  await opened.waitFor('Where you left it');
  opened.press(' ');
  await opened.waitFor('Space: one more');
  clock.wait(1000);
  return { build, one: () => one(opened), terminal: opened };
}

async function one(at: TestTerminal): Promise<BenchScreen> {
  clock.wait(1000);
  const before = await screenWhere(at, ({ tally }) => tally !== undefined, 'a count');
  at.press(' ');
  const done = (before.tally?.done ?? 0) + 1;
  return screenWhere(at, ({ tally }) => tally?.done === done, `a count of ${done}`);
}

const counted = (build: BuildOnDisk) =>
  [...build.saved().tallies.values()].reduce((sum, each) => sum + each, 0);

/** Counts on while the disk refuses, and once more when it does not: all of it is kept. */
async function countThrough(
  home: string,
  { harm, heal, says }: { harm: () => void; heal: () => void; says: RegExp },
) {
  const { build, one, terminal: at } = await atTheCount(home);
  await one();
  expect(counted(build)).toBe(1);
  harm();
  await one();
  const told = await one();
  expect(told.words).toMatch(says);
  expect(told.words).toContain('Kept here, and tried again at each key');
  // Leaving asks first: what is not on disk would be gone.
  expect((await pressed(at, '?')).words).toContain('NOT SAVED');
  await pressed(at, '\x1b');
  heal();
  const after = await one();
  expect(after.words).not.toContain('NOT SAVED');
  expect(counted(build)).toBe(4);
}

function smallDisk(): SmallDisk | undefined {
  disk = mountSmallDisk(join(scratch, 'disk'), 1024);
  if (disk === undefined) console.warn('Not tried: mounting a disk takes Linux and root.');
  return disk;
}

describe('the build goes on, says so, and loses nothing', () => {
  test('when the disk is full', async ({ skip }) => {
    const small = smallDisk();
    if (small === undefined) return skip();
    const filler = join(small.folder, 'filler');
    const home = join(small.folder, 'home');
    await countThrough(home, {
      harm: () => {
        // The save before makes room for the next one when it goes; held by another name, it does not.
        linkSync(join(home, 'builds', 'porch.prev.json'), join(small.folder, 'held'));
        const { bavail, bsize } = statfsSync(small.folder);
        writeFileSync(filler, Buffer.alloc(bavail * bsize));
      },
      heal: () => {
        rmSync(filler);
        rmSync(join(small.folder, 'held'));
      },
      says: /NOT SAVED: the disk is full/,
    });
  });

  test('when the disk may only be read', async ({ skip }) => {
    const small = smallDisk();
    if (small === undefined) return skip();
    await countThrough(join(small.folder, 'home'), {
      harm: () => small.mayWrite(false),
      heal: () => small.mayWrite(true),
      says: /NOT SAVED: the folder may not be written/,
    });
  });

  test('when the folder is gone, until it is back', async () => {
    const home = join(scratch, 'home');
    await countThrough(home, {
      harm: () => renameSync(home, join(scratch, 'elsewhere')),
      heal: () => renameSync(join(scratch, 'elsewhere'), home),
      says: /NOT SAVED: its folder is not there/,
    });
  });

  test('when the clock is set back by a day', async () => {
    const { build, one } = await atTheCount(join(scratch, 'home'));
    await one();
    clock.wait(-DAY_MS);
    expect((await one()).words).toMatch(/clock of this computer was set back/);
    expect((await one()).words).not.toMatch(/set back/);
    expect(counted(build)).toBe(3);
  });
});
