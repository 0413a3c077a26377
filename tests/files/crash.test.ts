import { existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import { unsealed } from '../../src/files/envelope.js';
import { releaseLock, stateOf, takeLock, takeOverLock } from '../../src/files/lock.js';
import { openShelf } from '../../src/files/open-shelf.js';
import { ahead, build, TUESDAY_14 } from '../support/journal.js';
import { compileChild, scratchFolder, startChild } from './second-program.js';

const scratch = scratchFolder();
let child = '';

beforeAll(async () => {
  child = await compileChild(scratch.path);
});

/** A build as large as a long recipe makes it, so that a kill often falls into the writing. */
const LARGE = build([], { recipeText: 'x'.repeat(150_000) });

/** Numbers of processes end at 4,194,304 (Linux, PID_MAX_LIMIT). */
const GONE = { pid: 4_194_305, born: 'an earlier boot 77', token: 't', sinceMs: 0 };

function putBuild(name: string): string {
  const folder = join(scratch.path, name);
  const shelf = openShelf(folder, () => TUESDAY_14);
  expect(shelf.create(LARGE, ahead(40))).toMatchObject({ ok: true });
  shelf.release();
  return folder;
}

/** Lets the program save until it is killed some milliseconds after its first save. */
async function killWhileSaving(folder: string, afterMs: number): Promise<number> {
  const saving = startChild(child, ['save', folder, LARGE.id]);
  const first = await saving.line();
  expect(first).toMatch(/^saved \d+$/);
  await sleep(afterMs);
  const last = [first, ...(await saving.kill())].filter(line => /^saved \d+$/.test(line ?? ''));
  return Number(last.at(-1)?.slice('saved '.length));
}

function eventsOnDisk(folder: string): number {
  const shelf = openShelf(folder, () => TUESDAY_14);
  const opened = shelf.load(LARGE.id);
  shelf.release();
  if (!opened.ok) throw new Error(opened.words);
  expect(opened.notice).toBe(undefined);
  return opened.workbook.events.length;
}

/** Every file that a next start would look at is whole. */
function expectWholeFiles(folder: string): void {
  const builds = join(folder, 'builds');
  for (const name of readdirSync(builds).filter(file => file.endsWith('.json'))) {
    expect(unsealed(readFileSync(join(builds, name), 'utf8')), name).toMatchObject({
      state: 'fine',
    });
  }
}

describe('a program killed while it saves', () => {
  test('50 times at random moments: no file is broken, nothing that was said to be saved is lost', async () => {
    // The moments are spread over 0 to 40 ms by the golden ratio, the same ones each time.
    const moments = Array.from({ length: 50 }, (_, i) => ((i * 0.618034) % 1) * 40);
    const runs = [0, 1].map(async half => {
      const folder = putBuild(`crash-${half}`);
      for (const moment of moments.filter((_, i) => i % 2 === half)) {
        const acknowledged = await killWhileSaving(folder, moment);
        expectWholeFiles(folder);
        const found = eventsOnDisk(folder);
        expect(found).toBeGreaterThanOrEqual(acknowledged);
        expect(found, 'at most one save was under way').toBeLessThanOrEqual(acknowledged + 1);
      }
    });
    await Promise.all(runs);
  }, 60_000);
});

describe('two programs at the same build', () => {
  test('the second one is refused as long as the first one runs, and named', async () => {
    const folder = putBuild('two');
    const first = startChild(child, ['hold', folder, LARGE.id]);
    expect(await first.line()).toBe('open');
    const shelf = openShelf(folder, () => TUESDAY_14);
    const refused = shelf.load(LARGE.id);
    expect(refused).toMatchObject({ ok: false, why: 'held' });
    expect(refused.ok ? '' : refused.words).toContain(`process ${first.process.pid} on `);
    await first.kill();
    expect(shelf.load(LARGE.id)).toMatchObject({ ok: true, notice: undefined });
    shelf.release();
  });

  test('the one whose build was taken over can no longer save', async () => {
    const folder = putBuild('taken');
    const first = startChild(child, ['save', folder, LARGE.id]);
    expect(await first.line()).toMatch(/^saved/);
    const shelf = openShelf(folder, () => TUESDAY_14);
    const opened = shelf.takeOver(LARGE.id);
    if (!opened.ok) throw new Error(opened.words);
    let said = await first.line();
    while (said?.startsWith('saved') === true) said = await first.line();
    expect(said).toMatch(/^failed .*changed by another Notchbook/);
    await first.kill();
    expect(shelf.save(opened.workbook, ahead(40))).toMatchObject({ ok: true });
    shelf.release();
  });

  test('of two that find a dead one’s lock in the same moment, exactly one gets it', async () => {
    const dead = startChild(child, ['hold', putBuild('dead'), LARGE.id]);
    expect(await dead.line()).toBe('open');
    await dead.kill();
    const lock = readFileSync(join(scratch.path, 'dead', 'builds', `${LARGE.id}.lock`), 'utf8');
    const racers = [0, 1].map(() => startChild(child, ['race']));
    for (const racer of racers) expect(await racer.line()).toBe('ready');
    const outcomes: string[] = [];
    for (let round = 0; round < 60; round += 1) {
      const file = join(scratch.path, `race-${round}.lock`);
      writeFileSync(file, lock);
      const instant = Date.now() + 8;
      for (const racer of racers) racer.process.stdin.write(`${file} ${instant}\n`);
      const said = await Promise.all(racers.map(racer => racer.line()));
      outcomes.push(said.sort().join(' and '));
    }
    await Promise.all(racers.map(racer => racer.kill()));
    expect(outcomes).toEqual(Array(60).fill('lost and won'));
  }, 30_000);

  test('a later program with the number of a dead one is not taken for it', async () => {
    const file = join(scratch.path, 'reused.lock');
    expect(takeLock(file, TUESDAY_14)).toMatchObject({ ok: true });
    expect(takeLock(file, TUESDAY_14)).toMatchObject({ ok: false, why: 'held' });
    const holder = JSON.parse(readFileSync(file, 'utf8')) as { born: string };
    // Without /proc nobody knows when a process was born, and the number alone has to do.
    if (holder.born === '') return;
    writeFileSync(file, JSON.stringify({ ...holder, born: `${holder.born}0` }));
    expect(takeLock(file, TUESDAY_14)).toMatchObject({ ok: true });
  });

  const held: readonly (readonly [string, string, boolean])[] = [
    ['another machine', JSON.stringify({ ...GONE, host: 'garage' }), false],
    ['this machine, a process long gone', JSON.stringify({ ...GONE, host: hostname() }), true],
    ['nobody can tell: a file that was never finished, old', 'half a ho', true],
  ];
  test.each(held)('a lock left by %s', (_, content, mayTake) => {
    const file = join(scratch.path, 'left.lock');
    writeFileSync(file, content);
    const anHourAgo = Date.now() / 1000 - 3600;
    utimesSync(file, anHourAgo, anHourAgo);
    expect(takeLock(file, TUESDAY_14).ok).toBe(mayTake);
    expect(takeOverLock(file, TUESDAY_14).ok).toBe(true);
  });

  test('a lock that is being written just now is left alone', () => {
    const file = join(scratch.path, 'fresh.lock');
    writeFileSync(file, '');
    expect(takeLock(file, TUESDAY_14)).toEqual({ ok: false, why: 'held', holder: undefined });
  });

  test('giving back a lock leaves that of whoever took it over', () => {
    const file = join(scratch.path, 'given.lock');
    const [first, second] = [takeLock(file, TUESDAY_14), takeOverLock(file, TUESDAY_14)];
    if (!first.ok || !second.ok) throw new Error('no lock');
    releaseLock(first.lock);
    expect(stateOf(second.lock)).toBe('ours');
    releaseLock(second.lock);
    expect(existsSync(file)).toBe(false);
    expect(readdirSync(scratch.path).filter(name => name.startsWith('given'))).toEqual([]);
  });
});
