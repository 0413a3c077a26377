import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvRecords } from '../../src/text/csv-records.js';
import { csvText } from '../../src/text/table.js';

const texts = (text: string) => {
  const read = csvRecords(text);
  if (!read.ok) throw new Error(read.problem);
  return read.records.map(record => record.map(cell => cell.text));
};

describe('values between commas', () => {
  // Source: RFC 4180, section 2: quotes around commas and line breaks, quotes doubled inside.
  test.each([
    [
      'a,b\r\nc,d\r\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a,b\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['"a,b","c ""d"""', [['a,b', 'c "d"']]],
    ['"a\nb",c', [['a\nb', 'c']]],
    [
      'a,,\n,b,',
      [
        ['a', '', ''],
        ['', 'b', ''],
      ],
    ],
    [
      'a;b\n1,5;2',
      [
        ['a', 'b'],
        ['1,5', '2'],
      ],
    ],
    ['\ufeffa,b', [['a', 'b']]],
    [' a , "b" ', [['a', 'b']]],
    ['# a note\n\na\n', [['a']]],
    ['', []],
  ])('%j', (text, records) => {
    expect(texts(text)).toEqual(records);
  });

  test('each cell knows its line and column, behind a line break in quotes too', () => {
    const read = csvRecords('a,"b\nc",d\n  e,f');
    expect(read.ok && read.records.flat().map(({ line, column }) => [line, column])).toEqual([
      [1, 1],
      [1, 3],
      [2, 4],
      [3, 3],
      [3, 5],
    ]);
  });

  test('what is written is read back', () => {
    const cell = fc.stringMatching(/^[a-z"',\n]{1,8}$/).map(text => text.trim() || 'x');
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 2 }), { maxLength: 5 });
    fc.assert(
      fc.property(rows, all => {
        expect(texts(csvText(['one', 'two'], all))).toEqual([['one', 'two'], ...all]);
      }),
    );
  });
});
