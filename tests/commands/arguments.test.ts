import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/commands/arguments.js';
import { HELP } from '../../src/commands/help.js';

function problemsOf(...words: string[]): readonly string[] {
  const read = readArguments(words);
  return read.ok ? [] : read.problems;
}

describe('the command line', () => {
  test('without a word opens the workbook in inches, sixteenths and 80 columns', () => {
    const read = readArguments([]);
    expect(read.ok && read.value).toMatchObject({ command: 'workbook', width: 80, as: 'text' });
  });

  test('takes --set as often as it is given, in order', () => {
    const read = readArguments(['plan', 'planter-bench', '--set', 'a=1', '--set=b=2']);
    expect(read.ok && read.value.sets).toEqual(['a=1', 'b=2']);
    expect(read.ok && read.value.rest).toEqual(['planter-bench']);
  });

  test.each([
    [['plann'], 'Did you mean "plan"?'],
    [['plan', '--sett', 'a=1'], 'Did you mean --set?'],
    [['plan', '--as', 'pdf'], 'text, json, csv, markdown'],
    [['plan', '--width', '10'], 'from 40 to 240'],
    [['plan', '--grid', '1/10in'], '1/16in, 1/32in, 1/64in'],
    [['plan', '--units', 'metric', '--grid', '1/16in'], '1mm, 0.5mm'],
    [['plan', '--set'], 'notchbook --help'],
  ])('%j is refused, and says what would do', (words, expected) => {
    expect(problemsOf(...words).join(' ')).toContain(expected);
  });

  test('lists the sources of the numbers, and its help names them and the mistakes', () => {
    const read = readArguments(['sources', '--as', 'json']);
    expect(read.ok && read.value).toMatchObject({ command: 'sources', as: 'json' });
    for (const word of ['notchbook sources', 'notchbook work mistake'])
      expect(HELP).toContain(word);
  });

  test('tells everything that is wrong at once', () => {
    expect(problemsOf('plan', '--as', 'x', '--units', 'y', '--width', 'z').length).toBe(3);
  });
});
