import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { carryIn, carryName, carryOut } from '../../src/files/carry.js';
import { openShelf } from '../../src/files/open-shelf.js';
import { ahead, build, TUESDAY_14 } from '../support/journal.js';
import { scratchFolder } from './second-program.js';

const scratch = scratchFolder();
const BENCH = build([{ kind: 'build-started', atMs: TUESDAY_14 }]);

describe('a build as one file', () => {
  test('comes out of it as it went in', () => {
    const out = carryOut(BENCH, join(scratch.path, carryName(BENCH)), TUESDAY_14);
    expect(out).toEqual({ ok: true, file: join(scratch.path, 'garden-bench.notchbook.json') });
    expect(carryIn(out.ok ? out.file : '')).toMatchObject({ ok: true, workbook: BENCH });
  });

  test('takes the place of an older copy of itself, and of nothing else', () => {
    const file = join(scratch.path, 'copy.json');
    carryOut(BENCH, file, TUESDAY_14);
    const later = { ...BENCH, events: [...BENCH.events, ...BENCH.events] };
    expect(carryOut(later, file, TUESDAY_14)).toMatchObject({ ok: true });
    writeFileSync(file, 'my list of plants');
    const refused = carryOut(BENCH, file, TUESDAY_14);
    expect(refused.ok ? '' : refused.words).toContain('is something else');
    expect(readFileSync(file, 'utf8')).toBe('my list of plants');
  });

  test('a file of the shelf itself can be carried too', () => {
    const folder = join(scratch.path, 'shelf');
    const shelf = openShelf(folder, () => TUESDAY_14);
    shelf.create(BENCH, ahead(40));
    shelf.release();
    const found = carryIn(join(folder, 'builds', 'garden-bench.json'));
    expect(found).toMatchObject({ ok: true, workbook: BENCH });
  });

  test('a cut-off one is refused, and it is said what to do', () => {
    const file = join(scratch.path, 'whole.json');
    carryOut(BENCH, file, TUESDAY_14);
    const cut = join(scratch.path, 'cut.json');
    writeFileSync(cut, readFileSync(file, 'utf8').slice(0, -40));
    const found = carryIn(cut);
    expect(found).toMatchObject({ ok: false });
    expect(found.ok ? '' : found.words).toContain('notchbook export');
  });

  test('a folder that is not there is told', () => {
    const out = carryOut(BENCH, join(scratch.path, 'nowhere', 'bench.json'), TUESDAY_14);
    expect(out.ok ? '' : out.words).toContain('is not there');
  });
});

describe('a build that nobody has open', () => {
  function shelved(name: string) {
    const folder = join(scratch.path, name);
    mkdirSync(folder);
    const shelf = openShelf(folder, () => TUESDAY_14);
    shelf.create(BENCH, ahead(40));
    shelf.release();
    return { folder, shelf };
  }

  test('gets another name and keeps its journal, its id and what is next', () => {
    const { shelf } = shelved('renamed');
    expect(shelf.relabel(BENCH.id, { name: 'Roof bench', putAway: false })).toMatchObject({
      ok: true,
    });
    expect(shelf.list()).toMatchObject([
      { id: 'garden-bench', name: 'Roof bench', stepsInAll: 40, next: 'Cut 24 at 18 in' },
    ]);
    expect(shelf.look(BENCH.id)).toMatchObject({ workbook: { ...BENCH, name: 'Roof bench' } });
  });

  test('is put away and brought back', () => {
    const { shelf } = shelved('put-away');
    shelf.relabel(BENCH.id, { name: BENCH.name, putAway: true });
    expect(shelf.list()).toMatchObject([{ putAway: true }]);
    shelf.relabel(BENCH.id, { name: BENCH.name, putAway: false });
    expect(shelf.list()).toMatchObject([{ putAway: false }]);
    expect(shelf.load(BENCH.id)).toMatchObject({ workbook: BENCH });
    shelf.release();
  });

  test('one that is open here, not on disk yet, is left alone and can still be saved', () => {
    const { shelf } = shelved('unsaved');
    shelf.load(BENCH.id);
    const refused = shelf.relabel(BENCH.id, { name: 'Mine', putAway: true });
    expect(refused.ok ? '' : refused.words).toContain('not on disk yet');
    expect(shelf.save(BENCH, ahead(40))).toMatchObject({ ok: true });
    shelf.release();
  });

  test('one that is open elsewhere is left alone', () => {
    const { folder, shelf } = shelved('held');
    const other = openShelf(folder, () => TUESDAY_14);
    other.load(BENCH.id);
    const refused = shelf.relabel(BENCH.id, { name: 'Mine', putAway: false });
    expect(refused.ok ? '' : refused.words).toContain('Close it there first');
    expect(shelf.list()).toMatchObject([{ name: BENCH.name }]);
    other.release();
  });
});
