import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Column, csvText, markdownTable, tableLines } from '../../src/text/table.js';
import { textWidth } from '../../src/text/width.js';

const columns: readonly Column[] = [
  { title: 'Mark' },
  { title: 'Part', grow: true },
  { title: 'Length', align: 'right' },
  { title: 'Count', align: 'right' },
];
const rows = [
  ['A1', 'Seat rail, front and back', '46-1/2 in', '2'],
  ['B', 'Slat', '8 in', '12'],
];

describe('a table on a page', () => {
  test('stands in columns, numbers to the right', () => {
    expect(tableLines(columns, rows, 80)).toEqual([
      'Mark  Part                          Length  Count',
      '────  ─────────────────────────  ─────────  ─────',
      'A1    Seat rail, front and back  46-1/2 in      2',
      'B     Slat                            8 in     12',
    ]);
  });

  test('wraps the column that may grow when the page is narrow', () => {
    expect(tableLines(columns, rows, 40)).toEqual([
      'Mark  Part                 Length  Count',
      '────  ────────────────  ─────────  ─────',
      'A1    Seat rail, front  46-1/2 in      2',
      '      and back',
      'B     Slat                   8 in     12',
    ]);
  });

  test('gives up words before numbers', () => {
    const narrow = tableLines(columns, rows, 28);
    expect(narrow.join('\n')).toContain('46-1/2 in');
    expect(narrow.every(line => textWidth(line) <= 28)).toBe(true);
  });

  test('cuts a column that may not grow and says so with dots', () => {
    const words = [{ title: 'Part' }, { title: 'Length', align: 'right' as const }];
    expect(tableLines(words, [['Seat rail, front', '46-1/2 in']], 20)).toEqual([
      'Part          Length',
      '─────────  ─────────',
      'Seat r...  46-1/2 in',
    ]);
  });

  test('keeps what a column asks for at least', () => {
    const two: readonly Column[] = [
      { title: 'Part', grow: true, least: 10 },
      { title: 'Why', grow: true, least: 4 },
    ];
    const [, rule = ''] = tableLines(two, [['a'.repeat(30), 'b'.repeat(30)]], 18);
    expect(rule).toBe('──────────  ──────');
  });

  test('has titles and a rule when there are no rows, and blanks for missing cells', () => {
    expect(tableLines(columns, [], 80)).toEqual([
      'Mark  Part  Length  Count',
      '────  ────  ──────  ─────',
    ]);
    expect(tableLines(columns, [['C']], 80)[2]).toBe('C');
  });

  test('shows line breaks inside a cell', () => {
    expect(tableLines([{ title: 'Say' }, { title: 'Who' }], [['hold\nlift', 'both']], 20)).toEqual([
      'Say   Who',
      '────  ────',
      'hold  both',
      'lift',
    ]);
  });

  test('is never wider than the page', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('46-1/2 in', '板板板', '½', 'a b c d e f'));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(cell, cell, cell, cell), { maxLength: 5 }),
        fc.integer({ min: 1, max: 60 }),
        (cells, width) => {
          for (const line of tableLines(columns, cells, width)) {
            expect(textWidth(line)).toBeLessThanOrEqual(width);
          }
        },
      ),
    );
  });
});

/** A reader of RFC 4180, section 2, written from its rules. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      while (text[at] !== '"' || text[at + 1] === '"') {
        if (text[at] === '"') at += 1;
        cell += text[at];
        at += 1;
      }
      at += 1;
    } else {
      while (text[at] !== ',' && text[at] !== '\r') {
        cell += text[at];
        at += 1;
      }
    }
    record.push(cell);
    if (text[at] === ',') {
      at += 1;
    } else {
      records.push(record);
      record = [];
      at += 2;
    }
  }
  return records;
}

describe('comma-separated values', () => {
  test('end each record in CRLF and quote only where needed', () => {
    expect(
      csvText(
        ['Mark', 'Part'],
        [
          ['A1', 'Rail, front'],
          ['B', '2" slat\nlong'],
        ],
      ),
    ).toBe('Mark,Part\r\nA1,"Rail, front"\r\nB,"2"" slat\nlong"\r\n');
  });

  test.each([
    ['=1+1', "'=1+1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['+cmd|x', "'+cmd|x"],
    ['-2+3|x', "'-2+3|x"],
    ['-A1', "'-A1"],
    ['-2-3/8 in', '-2-3/8 in'],
    ['-12.5', '-12.5'],
    ['-5 mm', '-5 mm'],
    ['-12%', '-12%'],
    ['+3 mm2', '+3 mm2'],
  ])('%s never runs as a formula', (cell, written) => {
    expect(csvText(['x'], [[cell]])).toBe(`x\r\n${written}\r\n`);
  });

  test('read back as they were written', () => {
    const cell = fc
      .array(fc.constantFrom('a', ',', '"', '\r', '\n', ' ', '½', '1'), { maxLength: 8 })
      .map(signs => `.${signs.join('')}`);
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell)), cells => {
        expect(readCsv(csvText(['x', 'y'], cells))).toEqual([['x', 'y'], ...cells]);
      }),
    );
  });
});

describe('a Markdown table', () => {
  test('reads as a table in its source too', () => {
    expect(markdownTable(columns, rows)).toBe(
      [
        '| Mark | Part                      |    Length | Count |',
        '| ---- | ------------------------- | --------: | ----: |',
        '| A1   | Seat rail, front and back | 46-1/2 in |     2 |',
        '| B    | Slat                      |      8 in |    12 |',
        '',
      ].join('\n'),
    );
  });

  test('shows what a user typed as it is', () => {
    expect(markdownTable([{ title: 'Note' }], [['a|b *c* <b>\nd']])).toContain(
      '| a\\|b \\*c\\* \\<b> d |',
    );
  });
});
