import {
  chmodSync,
  existsSync,
  readdirSync,
  renameSync,
  rmSync,
  statfsSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { openShelf } from '../../src/files/open-shelf.js';
import { record } from '../../src/workbook/start-workbook.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { ahead, build, TUESDAY_14 } from '../support/journal.js';
import { compileChild, scratchFolder, startChild } from './second-program.js';
import { mountSmallDisk } from './small-disk.js';

const scratch = scratchFolder();
const NOW = () => TUESDAY_14;
const BENCH = build([], { recipeText: 'x'.repeat(20_000) });
/** The id of "nobody" on most systems; it only has to be somebody else than root. */
const NOBODY = 65_534;
let child = '';

beforeAll(async () => {
  child = await compileChild(scratch.path);
});

function withOneMore(workbook: Workbook): Workbook {
  return record(workbook, { kind: 'piece-done', atMs: TUESDAY_14, step: 's', count: 1 });
}

/** What a program that starts now would find. */
function eventsFound(folder: string): number {
  const shelf = openShelf(folder, NOW);
  const opened = shelf.load(BENCH.id);
  shelf.release();
  if (!opened.ok) throw new Error(opened.words);
  return opened.workbook.events.length;
}

describe('a disk that fills up while a build is saved', () => {
  test('each save is whole or told, the one before stays, and room cures it', ({ skip }) => {
    const disk = mountSmallDisk(join(scratch.path, 'small'), 512);
    if (disk === undefined) {
      console.warn('Not tried: a full disk. Mounting one takes Linux and root.');
      return skip();
    }
    try {
      const filler = join(disk.folder, 'filler');
      const shelf = openShelf(disk.folder, NOW);
      let workbook = BENCH;
      expect(shelf.create(workbook, ahead(40))).toMatchObject({ ok: true });
      const outcomes = { saved: 0, told: 0 };
      for (let round = 0; round < 60; round += 1) {
        // 0 to 32 KB of room, for a build that grows or shrinks by up to 60 KB.
        fill(filler, disk.folder, (round * 7919) % 32_768);
        const recipeText = 'x'.repeat((round * 104_729) % 60_000);
        const longer = { ...withOneMore(workbook), recipeText };
        const outcome = shelf.save(longer, ahead(40));
        if (outcome.ok) workbook = longer;
        else expect(outcome).toMatchObject({ problem: 'disk-full' });
        outcomes[outcome.ok ? 'saved' : 'told'] += 1;
        rmSync(filler);
        shelf.release();
        expect(eventsFound(disk.folder), `round ${round}`).toBe(workbook.events.length);
        expect(shelf.load(BENCH.id)).toMatchObject({ ok: true, notice: undefined });
        expect(shelf.save(withOneMore(workbook), ahead(40))).toMatchObject({ ok: true });
        workbook = withOneMore(workbook);
      }
      expect(outcomes.saved).toBeGreaterThan(5);
      expect(outcomes.told).toBeGreaterThan(5);
      shelf.release();
      const left = readdirSync(join(disk.folder, 'builds'));
      expect(left.filter(name => name.includes('.prev.json.tmp-'))).toEqual([]);
    } finally {
      disk.unmount();
    }
  });
});

/** Writes until only so many bytes are free. */
function fill(file: string, folder: string, freeBytes: number): void {
  const { bavail, bsize } = statfsSync(folder);
  writeFileSync(file, Buffer.alloc(Math.max(0, bavail * bsize - freeBytes)));
}

describe('a folder that may only be read', () => {
  test('a disk mounted for reading: the build opens, nothing is saved, then it is', ({ skip }) => {
    const disk = mountSmallDisk(join(scratch.path, 'readable'), 1024);
    if (disk === undefined) {
      console.warn('Not tried: a disk for reading only. Mounting one takes Linux and root.');
      return skip();
    }
    try {
      const shelf = openShelf(disk.folder, NOW);
      shelf.create(BENCH, ahead(40));
      shelf.release();
      disk.mayWrite(false);
      const opened = shelf.load(BENCH.id);
      expect(opened).toMatchObject({ ok: true });
      expect(opened.ok ? opened.notice : '').toMatch(/^Nothing can be saved for now\. .*--data/);
      const start = performance.now();
      expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ problem: 'read-only' });
      expect(performance.now() - start, 'nobody waits for it').toBeLessThan(700);
      disk.mayWrite(true);
      expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
      shelf.release();
      expect(eventsFound(disk.folder)).toBe(1);
    } finally {
      disk.unmount();
    }
  });

  test('somebody without the right to write there is told so', async () => {
    const folder = join(scratch.path, 'theirs');
    const shelf = openShelf(folder, NOW);
    shelf.create(BENCH, ahead(40));
    shelf.release();
    chmodSync(join(folder, 'builds'), 0o555);
    const asRoot = process.getuid?.() === 0;
    const somebody = startChild(
      child,
      ['save-once', folder, BENCH.id],
      asRoot ? { uid: NOBODY } : {},
    );
    expect(await somebody.line()).toMatch(/^notice Nothing can be saved for now/);
    expect(await somebody.line()).toMatch(/^read-only .*may not be written/);
    const [, ms] = (await somebody.line())?.split(' ') ?? [];
    expect(Number(ms), 'nobody waits for it').toBeLessThan(700);
    await somebody.kill();
    chmodSync(join(folder, 'builds'), 0o755);
  });
});

describe('a data folder that can not be', () => {
  test('a file stands in its place: told, and nothing thrown', () => {
    const file = join(scratch.path, 'a-file');
    writeFileSync(file, 'mine');
    const shelf = openShelf(file, NOW);
    expect(shelf.list()).toEqual([]);
    const outcome = shelf.create(BENCH, ahead(40));
    expect(outcome).toMatchObject({ ok: false, problem: 'gone' });
    expect(outcome.ok ? '' : outcome.words).toContain('is not there, or is not a folder');
    shelf.release();
  });

  test('it vanishes in between, as a stick that is pulled out: told, and cured by its return', () => {
    const folder = join(scratch.path, 'stick');
    const elsewhere = join(scratch.path, 'pulled');
    const shelf = openShelf(folder, NOW);
    shelf.create(BENCH, ahead(40));
    renameSync(folder, elsewhere);
    const outcome = shelf.save(withOneMore(BENCH), ahead(40));
    expect(outcome).toMatchObject({ ok: false });
    expect(existsSync(folder), 'nothing is written where the stick was').toBe(false);
    renameSync(elsewhere, folder);
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
    shelf.release();
    expect(eventsFound(folder)).toBe(1);
  });

  test('a folder that was cleared away is made again, with all that was done', () => {
    const folder = join(scratch.path, 'cleared');
    const shelf = openShelf(folder, NOW);
    shelf.create(BENCH, ahead(40));
    rmSync(join(folder, 'builds'), { recursive: true });
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
    shelf.release();
    expect(eventsFound(folder)).toBe(1);
  });

  test('a stick that comes back over what was written meanwhile gets all of it', () => {
    const folder = join(scratch.path, 'mounted');
    const shelf = openShelf(folder, NOW);
    const [one, two] = [withOneMore(BENCH), withOneMore(withOneMore(BENCH))];
    shelf.create(BENCH, ahead(40));
    // Away: the empty folder that it was mounted on is there, and is written to.
    renameSync(join(folder, 'builds'), join(scratch.path, 'on-the-stick'));
    expect(shelf.save(one, ahead(40))).toMatchObject({ ok: true });
    // Back: an earlier save lies there, with our own lock.
    rmSync(join(folder, 'builds'), { recursive: true });
    renameSync(join(scratch.path, 'on-the-stick'), join(folder, 'builds'));
    const outcome = shelf.save(two, ahead(40));
    shelf.release();
    expect([outcome.ok, eventsFound(folder)]).toEqual([true, 2]);
  });
});
