import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { readArguments } from '../../src/commands/arguments.js';
import { runCommand } from '../../src/commands/run-command.js';
import type { Event } from '../../src/workbook/events.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { build, TUESDAY_14 } from '../support/journal.js';
import { libraryOf } from '../support/library.js';
import { type MemoryShelf, memoryShelf } from '../support/memory-shelf.js';
import { projectText } from '../support/projects.js';

const STARTED: Event = { kind: 'build-started', atMs: TUESDAY_14 };
const CUT: Event = { kind: 'piece-done', atMs: TUESDAY_14, step: 'cut-frame/1', count: 1 };
const MARKED: Event = { kind: 'note-written', atMs: TUESDAY_14, step: 'talk', text: 'shade' };
const BENCH = build([STARTED], { recipeText: projectText('planter-bench') });
const withJournal = (...events: readonly Event[]): Workbook => ({ ...BENCH, events });

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'notchbook-'));
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function run(shelf: MemoryShelf, ...words: string[]) {
  const read = readArguments(words);
  if (!read.ok) throw new Error(read.problems.join('\n'));
  return runCommand(read.value, {
    library: libraryOf({}),
    shelf: () => shelf,
    now: () => TUESDAY_14,
  });
}

const shelfWith = (...workbooks: readonly Workbook[]) => memoryShelf(() => TUESDAY_14, workbooks);

/** A file as another machine wrote it. */
function fileOf(workbook: Workbook): string {
  const file = join(folder, `${workbook.events.length}.json`);
  expect(run(shelfWith(workbook), 'export', workbook.id, '--to', file).code).toBe(0);
  return file;
}

describe('builds on the command line', () => {
  test('are listed by the names that commands take', () => {
    expect(run(shelfWith(), 'builds').out).toContain('There are no builds yet');
    expect(run(shelfWith(BENCH), 'builds').out).toMatch(/garden-bench +Garden bench/);
  });

  test('an unknown one is told, with those that there are', () => {
    const { err, code } = run(shelfWith(BENCH), 'export', 'gate');
    expect(code).toBe(3);
    expect(err).toContain('There are: garden-bench.');
    expect(run(shelfWith(BENCH), 'export')).toMatchObject({ code: 2 });
  });
});

describe('a build that comes from another machine', () => {
  test('is put on an empty shelf as it was', () => {
    const shelf = shelfWith();
    expect(run(shelf, 'import', fileOf(BENCH))).toMatchObject({ code: 0, err: '' });
    expect(shelf.stored('garden-bench')).toEqual(BENCH);
    // Planned anew, so that the list tells how many steps there are.
    expect(shelf.list()[0]?.stepsInAll).toBeGreaterThan(20);
  });

  test('takes the place of the one it went on from', () => {
    const shelf = shelfWith(BENCH);
    run(shelf, 'import', fileOf(withJournal(STARTED, CUT)));
    expect(shelf.stored('garden-bench')?.events).toEqual([STARTED, CUT]);
  });

  test('that is behind changes nothing', () => {
    const shelf = shelfWith(withJournal(STARTED, CUT));
    expect(run(shelf, 'import', fileOf(BENCH)).out).toContain('further on here');
    expect(shelf.stored('garden-bench')?.events).toEqual([STARTED, CUT]);
    expect(run(shelf, 'import', fileOf(withJournal(STARTED, CUT))).out).toContain('already');
  });

  test('where both went on, both are kept', () => {
    const shelf = shelfWith(withJournal(STARTED, CUT));
    run(shelf, 'import', fileOf(withJournal(STARTED, MARKED)));
    expect(shelf.stored('garden-bench')?.events).toEqual([STARTED, CUT]);
    expect(shelf.stored('garden-bench-from-the-file')).toMatchObject({
      name: 'Garden bench (from the file)',
      events: [STARTED, MARKED],
    });
  });

  test('another build of the same name gets a name of its own', () => {
    const shelf = shelfWith({ ...BENCH, createdAtMs: TUESDAY_14 - 1 });
    run(shelf, 'import', fileOf(BENCH));
    expect(shelf.list().map(({ id }) => id)).toEqual(
      expect.arrayContaining(['garden-bench', 'garden-bench-2']),
    );
  });

  test('a file that is none, or is not there, is told', () => {
    expect(run(shelfWith(), 'import')).toMatchObject({ code: 2 });
    expect(run(shelfWith(), 'import', join(folder, 'none.json'))).toMatchObject({ code: 3 });
  });

  test('a file that was cut off on the way can not be read, which is exit code 3', () => {
    const half = fileOf(BENCH);
    writeFileSync(half, readFileSync(half, 'utf8').slice(0, 200));
    const found = run(shelfWith(), 'import', half);
    expect(found.code).toBe(3);
    expect(found.err).toContain('cut off');
  });
});
