import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readArguments } from '../../src/commands/arguments.js';
import { handOverCommand } from '../../src/commands/hand-over.js';
import { benchOnDisk } from '../support/build-on-disk.js';

const HOME = mkdtempSync(join(tmpdir(), 'hand-over-'));
benchOnDisk(HOME, ({ phase }) => phase === 'hand-over');
afterAll(() => rmSync(HOME, { recursive: true }));

function handedOver(words: string, folder = HOME) {
  const read = readArguments(`hand-over ${words}`.trim().split(' '));
  if (!read.ok) throw new Error(read.problems.join(' '));
  return handOverCommand(read.value, folder);
}

describe('notchbook hand-over', () => {
  test.each(['porch', 'Porch'])('prints care sheet and record of %s', name => {
    const { out, code } = handedOver(name);
    expect(code).toBe(0);
    expect(out).toContain('Care sheet for the owner');
    expect(out).toContain('Build record: Porch');
    expect(out).toMatch(/Steps +39 of 40 steps done/);
  });

  test('no line is wider than asked', () => {
    const { out } = handedOver('porch --width 60');
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(60);
  });

  test('as Markdown', () => {
    expect(handedOver('porch --as markdown').out).toMatch(/^## Care sheet for the owner\n/);
  });

  test.each([
    ['', 2, /Which build\?/],
    ['porhc', 2, /There is no build "porhc".*Did you mean porch\?/],
    ['porch --as csv', 2, /hand-over prints text or markdown/],
    ['porch bench', 2, /quote a name of several words: "porch bench"/],
    ['../porch', 2, /There is no build/],
  ])('"%s" ends with %i and says what to do', (words, code, says) => {
    const outcome = handedOver(words);
    expect(outcome.code).toBe(code);
    expect(outcome.out).toBe('');
    expect(outcome.err).toMatch(says);
  });

  test('an empty folder, and a damaged build', () => {
    const empty = join(HOME, 'empty');
    expect(handedOver('porch', empty)).toMatchObject({ code: 2 });
    mkdirSync(join(empty, 'builds'), { recursive: true });
    writeFileSync(join(empty, 'builds', 'porch.json'), '{"format":');
    expect(handedOver('porch', empty)).toMatchObject({ code: 3, out: '' });
  });
});
