import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../src/text/width.js';
import { center, cut, head, padEnd, padStart, wrap } from '../../src/text/wrap.js';

describe('wrapping at words', () => {
  test('a measure is not torn from its unit', () => {
    expect(wrap('Cut the seat rail to 46-1/2 in and check it.', 27)).toEqual([
      'Cut the seat rail to',
      '46-1/2 in and check it.',
    ]);
  });

  test.each([
    ['coat 38 sq ft of faces', 10, ['coat', '38 sq ft', 'of faces']],
    ['use 8 fl oz of glue', 9, ['use', '8 fl oz', 'of glue']],
    ['wait (2 h), then', 8, ['wait', '(2 h),', 'then']],
    ['above 50 °F only', 9, ['above', '50 °F', 'only']],
    ['the rest is free', 9, ['the rest', 'is free']],
    ['a sq of cloth', 6, ['a sq', 'of', 'cloth']],
    ['', 10, ['']],
    ['one\n\ntwo', 10, ['one', '', 'two']],
    ['  two   spaces  ', 20, ['two spaces']],
    ['46-1/2 in', 6, ['46-1/2', 'in']],
    ['straightedge', 5, ['strai', 'ghted', 'ge']],
    ['板板板', 5, ['板板', '板']],
    ['a\u00a0b c', 3, ['a\u00a0b', 'c']],
  ])('%j in %i columns', (text, columns, lines) => {
    expect(wrap(text, columns)).toEqual(lines);
  });

  const words = fc.constantFrom(
    'seat',
    'rail',
    '46-1/2',
    'in',
    'sq',
    'ft',
    '38',
    'straightedge',
    '板',
    '½',
  );

  test('no line is wider than the page and no word is lost', () => {
    fc.assert(
      fc.property(fc.array(words), fc.integer({ min: 2, max: 40 }), (list, columns) => {
        const lines = wrap(list.join(' '), columns);
        for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(columns);
        expect(lines.join('').replaceAll(' ', '')).toBe(list.join(''));
      }),
    );
  });

  test('any text at all fits', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme' }),
        fc.integer({ min: 1, max: 12 }),
        (text, columns) => {
          for (const line of wrap(text, columns)) {
            expect(textWidth(line)).toBeLessThanOrEqual(columns);
          }
        },
      ),
    );
  });
});

test.each([
  ['slat', 4, 'slat'],
  ['seat rail', 8, 'seat...'],
  ['seat rail', 7, 'seat...'],
  ['46-1/2 in', 3, '...'],
  ['46-1/2 in', 2, '..'],
  ['46-1/2 in', 0, ''],
  ['板板板', 5, '板...'],
])('%j cut to %i columns is %j', (text, columns, shown) => {
  expect(cut(text, columns)).toBe(shown);
});

test('the head of a text ends before a wide character that does not fit', () => {
  expect(head('板板', 3)).toBe('板');
  expect(head('slats', 3)).toBe('sla');
});

test.each([
  ['slat', 7, 'slat   ', '   slat', ' slat  '],
  ['板', 4, '板  ', '  板', ' 板 '],
  ['slats', 3, 'slats', 'slats', 'slats'],
])('%j set in %i columns', (text, columns, left, right, middle) => {
  expect(padEnd(text, columns)).toBe(left);
  expect(padStart(text, columns)).toBe(right);
  expect(center(text, columns)).toBe(middle);
});
