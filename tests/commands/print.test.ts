import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/commands/arguments.js';
import { HELP } from '../../src/commands/help.js';
import { makeExample } from '../../src/commands/make-example.js';
import { type PrintMeans, printCommand } from '../../src/commands/print.js';
import type { MadeFile } from '../../src/files/put-files.js';
import { readTypeface } from '../../src/files/typeface.js';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { parsed, unreadable } from '../../src/measure/parsed.js';
import { PAGE_NAMES } from '../../src/print/pages/pack.js';
import { libraryOf } from '../support/library.js';
import { PRINTED_MS } from '../support/paper.js';
import { project, projectText } from '../support/projects.js';

const KEPT = { recipe: project('planter-bench'), text: projectText('planter-bench') };
const EXAMPLE = makeExample(KEPT, SIXTEENTHS, PRINTED_MS);

async function print(words: readonly string[], more: Partial<PrintMeans> = {}) {
  const read = readArguments(['print', ...words]);
  if (!read.ok) throw new Error(read.problems.join('\n'));
  const written: MadeFile[] = [];
  const outcome = await printCommand(read.value, {
    library: libraryOf(),
    build: () => ({ ok: false, why: 'unknown', known: [] }),
    typeface: () => readTypeface(import.meta.url),
    put: (folder, files) => {
      written.push(...files);
      return parsed(folder);
    },
    nowMs: PRINTED_MS,
    ...more,
  });
  return { ...outcome, names: written.map(({ name }) => name) };
}

describe('notchbook print', () => {
  test('makes paper, tables, words, data, its schema and drawings, and says where', async () => {
    const { code, names, out } = await print(['planter-bench', '--to', 'out', '--pages', 'cut']);
    expect(code).toBe(0);
    for (const name of ['pdf', 'md', 'json'].map(end => `planter-bench.${end}`))
      expect(names).toContain(name);
    for (const name of ['planter-bench-cut-list.csv', 'planter-bench-shopping.csv'])
      expect(names).toContain(name);
    expect(names).toContain('plan.schema.json');
    expect(names).toContain('drawings/front.svg');
    expect(out).toContain('Made in out:');
    // Without a first day nothing has a date.
    expect(names).not.toContain('planter-bench.ics');
    expect(out).toContain('--set first_day=');
  });

  test('adds a calendar where the sessions have days', async () => {
    const day = ['--set', 'first_day=2026-12-04'];
    const { names } = await print(['planter-bench', '--to', 'out', '--pages', 'cut', ...day]);
    expect(names).toContain('planter-bench.ics');
  });

  test('prints a build by its name, under its own name', async () => {
    const build = () => ({ ok: true, workbook: EXAMPLE, savedBefore: false }) as const;
    const { code, names } = await print(['example', '--to', 'out', '--pages', 'cut'], { build });
    expect(code).toBe(0);
    expect(names).toContain('example.pdf');
    const before = () => ({ ok: true, workbook: EXAMPLE, savedBefore: true }) as const;
    const older = await print(['example', '--to', 'out', '--pages', 'cut'], { build: before });
    expect(older.err).toContain('the save before it');
    const set = await print(['example', '--to', 'out', '--set', 'seat_length=6ft'], { build });
    expect(set.code).toBe(2);
    expect(set.err).toContain('changed in the workbook');
  });

  test('refuses a name that is a recipe and a build, and tells how to name each', async () => {
    const workbook = { ...EXAMPLE, id: 'planter-bench', name: 'Roof bench' };
    const build = () => ({ ok: true, workbook, savedBefore: false }) as const;
    const { code, err, names } = await print(['planter-bench', '--to', 'out'], { build });
    expect(code).toBe(2);
    expect(err).toContain('the build as "Roof bench"');
    expect(names).toEqual([]);
  });

  test.each([
    [['planter-bench'], 2, '--to FOLDER'],
    [['planter-bench', '--to', 'out', '--pages', 'cuts'], 2, 'Did you mean cut?'],
    [['planter-bench', '--to', 'out', '--set', 'seat_length=1in'], 2, 'seat_length'],
    [['bensh', '--to', 'out'], 3, 'nor a build is called "bensh"'],
  ] as const)('%j ends with %i', async (words, code, told) => {
    const outcome = await print(words);
    expect(outcome.code).toBe(code);
    expect(outcome.err).toContain(told);
    expect(outcome.names).toEqual([]);
  });

  test('ends with 3 where the folder takes no files', async () => {
    const put = () => unreadable('You have no right to write into out.', 'Name another folder.');
    const { code, err } = await print(['planter-bench', '--to', 'out', '--pages', 'cut'], { put });
    expect(code).toBe(3);
    expect(err).toContain('no right to write into out. Name another folder.');
  });

  test('names every page in the help', () => {
    for (const name of PAGE_NAMES) expect(HELP).toMatch(new RegExp(`[,: ]${name}\\b`));
  });
});
