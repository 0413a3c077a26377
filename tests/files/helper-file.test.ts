import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { helperStore } from '../../src/files/helper-file.js';
import type { Learned } from '../../src/workbook/learned.js';
import { scratchFolder } from './second-program.js';

const scratch = scratchFolder();
/** `date -u -d @1795528800`: November 24, 2026, 14:00. */
const NOW_MS = 1_795_528_800_000;

const BENCH: Learned = {
  build: 'planter-bench 1',
  tools: [{ tool: 'chisel', atMs: NOW_MS }],
  alone: 1,
  together: 2,
  sinceMs: 0,
  lastAtMs: NOW_MS,
};
const TABLE: Learned = { ...BENCH, build: 'table 2', alone: 4 };

function folder(name: string, content?: string): string {
  const path = join(scratch.path, name);
  mkdirSync(path, { recursive: true });
  if (content !== undefined) writeFileSync(join(path, 'helper.json'), content);
  return path;
}

describe('the helper file', () => {
  test('keeps what was learned in each build, for the next program', () => {
    const path = join(scratch.path, 'new', 'folder');
    const store = helperStore(path, () => NOW_MS);
    expect(store.known()).toEqual([]);
    store.keep(BENCH.build, BENCH);
    store.keep(TABLE.build, TABLE);
    store.keep(BENCH.build, { ...BENCH, alone: 7 });
    const after = helperStore(path, () => NOW_MS).known();
    expect(after).toHaveLength(2);
    expect(after.find(({ build }) => build === BENCH.build)?.alone).toBe(7);
    expect(readdirSync(path)).toEqual(['helper.json']);
  });

  test('what was all taken back is kept no longer', () => {
    const store = helperStore(folder('back'), () => NOW_MS);
    store.keep(BENCH.build, BENCH);
    store.keep(BENCH.build, undefined);
    expect(store.known()).toEqual([]);
  });

  test('two programs do not write over what the other learned', () => {
    const path = folder('two');
    const one = helperStore(path, () => NOW_MS);
    const other = helperStore(path, () => NOW_MS);
    one.keep(BENCH.build, BENCH);
    other.keep(TABLE.build, TABLE);
    one.keep(BENCH.build, { ...BENCH, together: 3 });
    expect(
      other
        .known()
        .map(({ build }) => build)
        .sort(),
    ).toEqual([BENCH.build, TABLE.build]);
  });

  test.each(['', '{"format":1,"builds":[', 'null', '{"format":1,"builds":[{"build":1}]}'])(
    'damaged (%s): moved aside whole, and begun anew',
    content => {
      const path = folder(`damaged${content.length}`, content);
      const store = helperStore(path, () => NOW_MS);
      expect(store.known()).toEqual([]);
      store.keep(BENCH.build, BENCH);
      expect(store.known()).toEqual([BENCH]);
      expect(readFileSync(join(path, 'helper.broken-2026-11-24T140000Z.json'), 'utf8')).toBe(
        content,
      );
    },
  );

  test('that of a newer program is left alone', () => {
    const newer = '{"format":2,"helpers":[]}';
    const path = folder('newer', newer);
    const store = helperStore(path, () => NOW_MS);
    expect(store.known()).toEqual([]);
    expect(store.keep(BENCH.build, BENCH)).toBe(undefined);
    expect(readFileSync(join(path, 'helper.json'), 'utf8')).toBe(newer);
  });

  test('a folder that can not be made is told, not thrown, and tried again', () => {
    const file = join(scratch.path, 'file');
    writeFileSync(file, 'mine');
    const store = helperStore(file, () => NOW_MS);
    expect(store.keep(BENCH.build, BENCH)).toMatchObject({ problem: 'other' });
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });
});
