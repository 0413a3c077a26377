import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { putFiles } from '../../src/files/put-files.js';
import { scratchFolder } from './second-program.js';

const scratch = scratchFolder();
let folders = 0;

function freshFolder(): string {
  folders += 1;
  return join(scratch.path, `out-${folders}`);
}

const text = (folder: string, name: string) => readFileSync(join(folder, name), 'utf8');

describe('files that a command makes in a folder', () => {
  test('are written, folders are made, and nothing is left beside them', () => {
    const folder = freshFolder();
    const put = putFiles(folder, [
      { name: 'bench.md', content: '# Bench' },
      { name: 'drawings/front.svg', content: '<svg/>' },
    ]);
    expect(put.ok).toBe(true);
    expect(text(folder, 'bench.md')).toBe('# Bench');
    expect(text(folder, 'drawings/front.svg')).toBe('<svg/>');
    expect(readdirSync(folder).sort()).toEqual(['bench.md', 'drawings', 'notchbook-files.json']);
  });

  test('take the place of what the last run made; what is made no more goes', () => {
    const folder = freshFolder();
    putFiles(folder, [
      { name: 'bench.md', content: 'one' },
      { name: 'drawings/step-9.svg', content: 'old' },
    ]);
    expect(putFiles(folder, [{ name: 'bench.md', content: 'two' }]).ok).toBe(true);
    expect(text(folder, 'bench.md')).toBe('two');
    expect(existsSync(join(folder, 'drawings/step-9.svg'))).toBe(false);
  });

  test('never take the place of a file of somebody else: nothing is written then', () => {
    const folder = freshFolder();
    mkdirSync(folder);
    writeFileSync(join(folder, 'bench.md'), 'mine');
    const put = putFiles(folder, [
      { name: 'a.md', content: 'a' },
      { name: 'bench.md', content: 'yours' },
    ]);
    expect(put).toMatchObject({ ok: false });
    expect(put.ok ? '' : put.problem).toContain('bench.md');
    expect(text(folder, 'bench.md')).toBe('mine');
    expect(existsSync(join(folder, 'a.md'))).toBe(false);
  });

  test('nor of one of ours that was changed since; and one that is made no more stays then', () => {
    const folder = freshFolder();
    putFiles(folder, [
      { name: 'bench.md', content: 'one' },
      { name: 'old.md', content: 'old' },
    ]);
    writeFileSync(join(folder, 'bench.md'), 'one, with a note of mine');
    writeFileSync(join(folder, 'old.md'), 'old, with a note of mine');
    expect(putFiles(folder, [{ name: 'bench.md', content: 'two' }]).ok).toBe(false);
    writeFileSync(join(folder, 'bench.md'), 'one');
    expect(putFiles(folder, [{ name: 'bench.md', content: 'two' }]).ok).toBe(true);
    expect(text(folder, 'old.md')).toBe('old, with a note of mine');
  });

  test('a record that points out of the folder is not followed', () => {
    const folder = freshFolder();
    mkdirSync(folder);
    writeFileSync(join(scratch.path, 'victim.md'), 'x');
    // SHA-256 of "x": FIPS 180-4.
    const digest = '2d711642b726b04401627ca9fbac32f5c8530fb1903cc4db02258717921a4881';
    const record = { files: { '../victim.md': [digest] } };
    writeFileSync(join(folder, 'notchbook-files.json'), JSON.stringify(record));
    expect(putFiles(folder, [{ name: 'bench.md', content: 'one' }]).ok).toBe(true);
    expect(existsSync(join(scratch.path, 'victim.md'))).toBe(true);
  });

  test('a folder that is a file is told with its name', () => {
    const file = join(scratch.path, 'a-file');
    writeFileSync(file, '');
    const put = putFiles(file, [{ name: 'bench.md', content: 'one' }]);
    expect(put.ok ? '' : `${put.problem} ${put.hint}`).toContain(`${file} is no folder`);
    const below = putFiles(join(file, 'out'), [{ name: 'bench.md', content: 'one' }]);
    expect(below.ok ? '' : below.problem).toContain('is no folder');
  });

  test.skipIf(process.platform !== 'linux')('a place where no folder can be made is told', () => {
    const put = putFiles('/proc/notchbook', [{ name: 'bench.md', content: 'one' }]);
    expect(put.ok ? '' : put.problem).toContain('/proc/notchbook could not be written to');
  });
});
