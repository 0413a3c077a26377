import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barLines } from '../../src/text/bar-lines.js';
import { boardBar, type Stretch } from '../../src/text/board-bar.js';
import { bodyLines } from '../../src/text/page-lines.js';
import { pageMarkdown } from '../../src/text/page-markdown.js';

const piece = (from: number, to: number, ...labels: string[]): Stretch => ({
  kind: 'piece',
  from,
  to,
  labels,
});
const left = (from: number, to: number): Stretch => ({ kind: 'left', from, to, labels: [] });

describe('a board to scale', () => {
  // Source: sum on paper: 31 columns are 30 steps of 100 mm; cuts at 1000 and 2003 mm stand in 10 and 20.
  test.each([
    [
      [piece(0, 1000, 'A'), piece(1003, 2003, 'A'), left(2006, 3000)],
      '├─── A ───┼─── A ───┤░░░░░░░░░░',
    ],
    [[piece(0, 1000, 'A'), piece(1003, 3000, 'B')], '├─── A ───┼──────── B ────────┤'],
    // A name that has no room is left out, its shorter form taken.
    [[piece(0, 400, 'A 400 mm', 'A'), left(403, 3000)], '├ A ┤░░░░░░░░░░░░░░░░░░░░░░░░░░'],
    [[piece(0, 200, 'long'), left(203, 3000)], '├─┤░░░░░░░░░░░░░░░░░░░░░░░░░░░░'],
    [
      [{ kind: 'lost', from: 500, to: 800, labels: [] }, piece(800, 3000, 'A')] as const,
      '     ╳╳╳├───────── A ─────────┤',
    ],
  ] as const)('%#', (stretches, line) => {
    expect(boardBar({ length: 3000, stretches }, { longest: 3000, columns: 31 })).toBe(line);
  });

  // Source: sum on paper: 15 steps of 100 mm, so 14 signs between the ends.
  test('a board half as long is half as wide', () => {
    const bar = { length: 1500, stretches: [piece(0, 1500, 'A')] };
    expect(boardBar(bar, { longest: 3000, columns: 31 })).toBe('├───── A ──────┤');
  });

  test('every cut is within half a column of its place, and no board is wider than the sheet', () => {
    const lengths = fc.array(fc.integer({ min: 60, max: 900 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(lengths, fc.integer({ min: 40, max: 120 }), (all, columns) => {
        let at = 0;
        const stretches = all.map(length => {
          const from = at;
          at += length + 3;
          return piece(from, from + length, 'A');
        });
        const longest = 6000;
        const line = boardBar({ length: at, stretches }, { longest, columns });
        expect(line.length).toBeLessThanOrEqual(columns);
        for (const { to } of stretches) {
          // Where a cut lies just between two columns, either is within half of one.
          const exact = (to / longest) * (columns - 1);
          const near = [Math.floor(exact), Math.ceil(exact)].filter(
            column => Math.abs(column - exact) <= 0.5 + 1e-9,
          );
          expect(near.map(column => line[column])).toSatisfy((signs: string[]) =>
            signs.some(sign => sign === '┼' || sign === '┤'),
          );
        }
      }),
    );
  });
});

describe('boards on a page', () => {
  const bars = [
    { name: '1', text: '8 ft: 1 x A', bar: { length: 2400, stretches: [piece(0, 1200, 'A')] } },
    { name: '2-10', text: '4 ft: 1 x A', bar: { length: 1200, stretches: [piece(0, 1200, 'A')] } },
  ];

  // Source: sum on paper: 23 columns are 22 steps for 2400 mm, so 1200 mm end in step 11.
  test('share one scale under their words', () => {
    expect(barLines(bars, 29)).toEqual([
      '1     8 ft: 1 x A',
      '      ├─── A ────┤',
      '2-10  4 ft: 1 x A',
      '      ├─── A ────┤',
    ]);
  });

  test('are words alone where there is no room to draw', () => {
    expect(barLines(bars, 20)).toEqual(['1     8 ft: 1 x A', '2-10  4 ft: 1 x A']);
  });

  test('stand in a page, and fenced in Markdown', () => {
    expect(bodyLines([{ kind: 'bars', bars }], 29).length).toBe(4);
    expect(bodyLines([{ kind: 'bars', bars: [] }], 29)).toEqual([]);
    const page = { id: 'b', title: 'Boards', blocks: [{ kind: 'bars' as const, bars }] };
    expect(pageMarkdown(page)).toContain('```text\n1     8 ft: 1 x A\n');
  });
});
