import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sealed } from '../../src/files/envelope.js';
import { openShelf } from '../../src/files/open-shelf.js';
import { record } from '../../src/workbook/start-workbook.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { ahead, build, clampsOn, HOUR, MINUTE, TUESDAY_14 } from '../support/journal.js';
import { scratchFolder } from './second-program.js';

const scratch = scratchFolder();
const NOW = () => TUESDAY_14;
const BENCH = build([{ kind: 'build-started', atMs: TUESDAY_14 }]);

function withOneMore(workbook: Workbook): Workbook {
  return record(workbook, { kind: 'step-done', atMs: TUESDAY_14, step: 'cut-frame/1' });
}

/** A shelf in a folder of its own with the bench saved twice: started, then one step done. */
function shelfWithBench(name: string) {
  const folder = join(scratch.path, name);
  const shelf = openShelf(folder, NOW);
  expect(shelf.create(BENCH, ahead(40))).toMatchObject({ ok: true, rev: 1 });
  expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true, rev: 2 });
  shelf.release();
  const builds = join(folder, 'builds');
  return { shelf, folder, builds, main: join(builds, 'garden-bench.json') };
}

describe('saving and opening', () => {
  test('what was saved last comes back, and the save before is kept beside it', () => {
    const { shelf, builds } = shelfWithBench('plain');
    expect(shelf.load(BENCH.id)).toEqual({
      ok: true,
      workbook: withOneMore(BENCH),
      notice: undefined,
    });
    shelf.release();
    expect(readdirSync(builds).sort()).toEqual(['garden-bench.json', 'garden-bench.prev.json']);
    const before = JSON.parse(readFileSync(join(builds, 'garden-bench.prev.json'), 'utf8'));
    expect(before).toMatchObject({ rev: 1, doc: expect.stringContaining('build-started') });
  });

  test('a file saved by the first version can be opened', () => {
    const folder = join(scratch.path, 'first-version');
    mkdirSync(join(folder, 'builds'), { recursive: true });
    const saved = readFileSync(new URL('data/format-1.json', import.meta.url), 'utf8');
    writeFileSync(join(folder, 'builds', 'cedar-bench.json'), saved);
    const shelf = openShelf(folder, NOW);
    const opened = shelf.load('cedar-bench');
    shelf.release();
    expect(opened).toMatchObject({
      ok: true,
      notice: undefined,
      workbook: { name: 'Cedar bench', answers: { seat_length: { value: 1219.2 } } },
    });
    expect(opened.ok ? opened.workbook.events.map(({ kind }) => kind) : []).toEqual([
      'build-started',
      'step-done',
      'piece-done',
      'timer-started',
      'paused',
    ]);
  });

  test('an example lies apart from the builder’s own', () => {
    const folder = join(scratch.path, 'example');
    const shelf = openShelf(folder, NOW);
    shelf.create(build([], { id: 'example-bench', example: true }), ahead(40));
    shelf.create(BENCH, ahead(40));
    shelf.release();
    expect(readdirSync(join(folder, 'example'))).toEqual(['example-bench.json']);
    expect(readdirSync(join(folder, 'builds'))).toEqual(['garden-bench.json']);
    expect(shelf.list().map(({ id, example }) => [id, example])).toEqual([
      ['garden-bench', false],
      ['example-bench', true],
    ]);
  });

  test('a name that is taken is refused, and what lies there stays', () => {
    const { shelf, main } = shelfWithBench('taken');
    const there = readFileSync(main, 'utf8');
    expect(shelf.create(build([]), ahead(40))).toMatchObject({ ok: false, problem: 'other' });
    expect(readFileSync(main, 'utf8')).toBe(there);
  });

  test('what no build is called is not there, and no path leads out of the folder', () => {
    const { shelf, folder } = shelfWithBench('ids');
    writeFileSync(join(folder, 'secret.json'), '{}');
    for (const id of ['bench', '', '../secret', 'builds/garden-bench', 'garden-bench.prev']) {
      expect(shelf.load(id), id).toMatchObject({ ok: false, why: 'missing' });
    }
  });

  test('a build may be opened again in the same session', () => {
    const { shelf } = shelfWithBench('again');
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: true });
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: true });
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
    shelf.release();
  });

  test('saving what was never opened is a fault of the program', () => {
    expect(() => openShelf(scratch.path, NOW).save(BENCH, ahead(40))).toThrow(
      /before it was opened/,
    );
  });

  test('a file that somebody else wrote meanwhile is not written over', () => {
    const { shelf, main } = shelfWithBench('foreign');
    shelf.load(BENCH.id);
    const foreign = JSON.stringify(
      sealed({ rev: 9, savedAtMs: TUESDAY_14, stepsInAll: 40, doc: '{"format":1}' }),
    );
    writeFileSync(main, foreign);
    expect(shelf.save(BENCH, ahead(40))).toMatchObject({
      ok: false,
      problem: 'changed-by-another',
    });
    expect(readFileSync(main, 'utf8')).toBe(foreign);
    shelf.release();
  });

  test('inside a Snap package saves replace the whole file too', () => {
    const { shelf, main } = shelfWithBench('snap');
    process.env.SNAP = '/snap/notchbook/1';
    shelf.load(BENCH.id);
    const before = statSync(main).ino;
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
    expect(statSync(main).ino).not.toBe(before);
    expect(process.env.SNAP).toBe('/snap/notchbook/1');
    delete process.env.SNAP;
    shelf.release();
  });
});

describe('a damaged file', () => {
  const whole = JSON.stringify(
    sealed({ rev: 2, savedAtMs: TUESDAY_14, stepsInAll: 40, doc: '{"format":1}' }),
  );
  const forms: readonly (readonly [string, string])[] = [
    ['empty', ''],
    ['cut off', whole.slice(0, whole.length / 2)],
    ['zeros, as a power cut leaves them', '\0'.repeat(500)],
    ['null', 'null'],
    ['a list', `[${whole}]`],
    ['a text', '"bench"'],
    ['a number', '7'],
    ['an object of something else', '{"a":1}'],
    ['one letter changed', whole.replace('format\\":1', 'format\\":2')],
    ['a wrong sum', whole.replace(/"sum":"./, '"sum":"x')],
    ['whole, but its content is no build', whole],
  ];

  test.each(forms)('%s: the save before is opened, the file is copied aside', (form, content) => {
    const { shelf, builds, main } = shelfWithBench(`damaged-${form.replace(/\W/g, '-')}`);
    writeFileSync(main, content);
    expect(shelf.list()).toMatchObject([{ id: BENCH.id, stepsDone: 0 }]);
    const opened = shelf.load(BENCH.id);
    expect(opened).toMatchObject({ ok: true, workbook: BENCH });
    const aside = join(builds, 'garden-bench.broken-2026-11-24T140000Z.json');
    expect(opened.ok ? opened.notice : '').toContain(aside);
    expect(readFileSync(aside, 'utf8')).toBe(content);
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
    shelf.release();
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: true, notice: undefined });
    shelf.release();
  });

  test.each(forms)(
    '%s, and the save before too: both stay, and it is told where',
    (form, content) => {
      const { shelf, builds, main } = shelfWithBench(`lost-${form.replace(/\W/g, '-')}`);
      const before = join(builds, 'garden-bench.prev.json');
      writeFileSync(main, content);
      writeFileSync(before, 'also broken');
      expect(shelf.list()).toMatchObject([{ id: BENCH.id, trouble: expect.any(String) }]);
      const opened = shelf.load(BENCH.id);
      expect(opened).toMatchObject({ ok: false, why: 'damaged' });
      expect(opened.ok ? '' : opened.words).toContain(main);
      expect(opened.ok ? '' : opened.words).toContain(before);
      expect(shelf.create(BENCH, ahead(40)), 'nothing is begun over it').toMatchObject({
        ok: false,
      });
      expect([readFileSync(main, 'utf8'), readFileSync(before, 'utf8')]).toEqual([
        content,
        'also broken',
      ]);
      expect(existsSync(join(builds, 'garden-bench.lock')), 'nobody is locked out').toBe(false);
    },
  );

  test('a byte-order mark in front, as some editors put it, does no harm', () => {
    const { shelf, main } = shelfWithBench('bom');
    writeFileSync(main, `\ufeff${readFileSync(main, 'utf8')}`);
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: true, notice: undefined });
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true });
    shelf.release();
  });

  test('a file that is gone is brought back from the save before', () => {
    const { shelf, main } = shelfWithBench('gone');
    rmSync(main);
    const opened = shelf.load(BENCH.id);
    expect(opened).toMatchObject({ ok: true, workbook: BENCH });
    expect(opened.ok ? opened.notice : '').toMatch(/is gone, so the save before it was opened/);
    expect(existsSync(main)).toBe(true);
    shelf.release();
  });

  test('damage while the program runs: what is in memory is saved, the damaged file kept', () => {
    const { shelf, builds, main } = shelfWithBench('running');
    shelf.load(BENCH.id);
    writeFileSync(main, 'garbage');
    expect(shelf.save(withOneMore(withOneMore(BENCH)), ahead(40))).toMatchObject({ ok: true });
    shelf.release();
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: true, notice: undefined });
    shelf.release();
    const aside = readdirSync(builds).filter(name => name.includes('broken'));
    expect(aside.map(name => readFileSync(join(builds, name), 'utf8'))).toEqual(['garbage']);
  });

  test('one of a newer version is refused, never replaced by the save before', () => {
    const { shelf, main } = shelfWithBench('newer');
    const doc = JSON.stringify({ format: 2 });
    const newer = [
      JSON.stringify({ format: 2, anything: true }),
      JSON.stringify(sealed({ rev: 3, savedAtMs: TUESDAY_14, stepsInAll: 40, doc })),
    ];
    for (const content of newer) {
      writeFileSync(main, content);
      const opened = shelf.load(BENCH.id);
      expect(opened).toMatchObject({ ok: false, why: 'newer' });
      expect(opened.ok ? '' : opened.words).toMatch(/saved by a newer Notchbook \(format 2\)/);
      expect(readFileSync(main, 'utf8')).toBe(content);
      expect(shelf.list()).toMatchObject([{ trouble: expect.stringMatching(/newer Notchbook/) }]);
    }
  });

  test('a folder where the file should be is refused and left alone', () => {
    const folder = join(scratch.path, 'a-folder');
    mkdirSync(join(folder, 'builds', 'garden-bench.json'), { recursive: true });
    const shelf = openShelf(folder, NOW);
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: false, why: 'refused' });
    expect(shelf.list()).toMatchObject([{ trouble: 'it is a folder' }]);
  });
});

describe('the list', () => {
  test('the one saved last comes first, with its steps and its timers', () => {
    let nowMs = TUESDAY_14;
    const shelf = openShelf(join(scratch.path, 'list'), () => nowMs);
    shelf.create(build([], { id: 'older', name: 'Older' }), ahead(12));
    nowMs += HOUR;
    shelf.create(build([clampsOn(nowMs, 30)], { id: 'newer', name: 'Newer' }), ahead(40));
    expect(shelf.list()).toEqual([
      {
        id: 'newer',
        name: 'Newer',
        recipe: 'planter-bench',
        example: false,
        putAway: false,
        begun: true,
        stepsDone: 0,
        stepsInAll: 40,
        next: 'Cut 24 at 18 in',
        savedAtMs: nowMs,
        timers: [
          {
            name: 'Clamps on the end panels',
            endsAtMs: nowMs + 30 * MINUTE,
            then: 'Take the clamps off.',
          },
        ],
      },
      expect.objectContaining({ id: 'older', begun: false, stepsInAll: 12, savedAtMs: TUESDAY_14 }),
    ]);
    shelf.release();
  });

  test('a clock that was set back between two saves loses nothing', () => {
    let nowMs = TUESDAY_14;
    const shelf = openShelf(join(scratch.path, 'clock'), () => nowMs);
    shelf.create(BENCH, ahead(40));
    nowMs -= 24 * HOUR;
    expect(shelf.save(withOneMore(BENCH), ahead(40))).toMatchObject({ ok: true, rev: 2 });
    shelf.release();
    expect(shelf.load(BENCH.id)).toMatchObject({ ok: true, workbook: withOneMore(BENCH) });
    shelf.release();
  });
});

test('what killed programs left behind goes after an hour, and nothing else', () => {
  const { folder, builds } = shelfWithBench('sweep');
  const old = ['garden-bench.json.tmp-1764000000abcdef', 'garden-bench.lock.tmp-17640000000000ff'];
  const stays = ['garden-bench.json.tmp-notes', 'plan.tmp-1764000000abcdef', 'notes.txt'];
  const fresh = 'garden-bench.prev.json.tmp-1764000000abcdee';
  const wallMs = Date.now();
  for (const name of [...old, ...stays]) {
    writeFileSync(join(builds, name), '');
    utimesSync(join(builds, name), wallMs / 1000 - 3700, wallMs / 1000 - 3700);
  }
  writeFileSync(join(builds, fresh), '');
  openShelf(folder, () => wallMs);
  expect(readdirSync(builds).sort()).toEqual(
    ['garden-bench.json', 'garden-bench.prev.json', fresh, ...stays].sort(),
  );
});
