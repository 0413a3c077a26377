import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Node } from '../../src/recipe/formula.js';
import { formulaText } from '../../src/recipe/formula-text.js';
import { isProblem, parseFormula } from '../../src/recipe/parse-formula.js';
import { problemLine } from '../../src/recipe/problem-words.js';

const AT = { line: 3, column: 10 };

const placeOf = (offset: number) => ({ line: AT.line, column: AT.column + offset });

function nodeOf(text: string): Node {
  const read = parseFormula(text, placeOf);
  if (isProblem(read)) throw new Error(problemLine(read, 'formula'));
  return read.node;
}

function complaint(text: string): string {
  const read = parseFormula(text, placeOf);
  return isProblem(read) ? problemLine(read, 'f') : 'no problem';
}

describe('a formula is grouped as on paper', () => {
  test.each([
    ['a + b * c', 'a + (b * c)'],
    ['10 - 2 - 3', '(10 - 2) - 3'],
    ['12 / 2 / 3', '(12 / 2) / 3'],
    ['-a * b', '(-a) * b'],
    ['a - -b', 'a - (-b)'],
    ['a < b + 1 in', 'a < (b + 25.4 mm)'],
    ['a = b and c or d', '((a = b) and c) or d'],
    ['not a = b and c', '(not (a = b)) and c'],
    ['if(a > 1, b, c) + d', '(if(a > 1, b, c)) + d'],
  ])('%s is %s', (text, grouped) => {
    expect(formulaText(nodeOf(text))).toBe(formulaText(nodeOf(grouped)));
  });

  test('parentheses that change the sum are kept', () => {
    expect(formulaText(nodeOf('a-(b-c)'))).toBe('a - (b - c)');
    expect(formulaText(nodeOf('a-(b*c)'))).toBe('a - b * c');
    expect(formulaText(nodeOf('(a+b)*c'))).toBe('(a + b) * c');
  });
});

// One inch is 25.4 mm exactly (international yard and pound agreement, 1959).
describe('a number with its unit is a length', () => {
  test.each([
    ['5 in', 127],
    ['1-1/2 in', 38.1],
    ['3/8 in', 9.525],
    ['2.5in', 63.5],
    ['45 mm', 45],
    ['1.2 m', 1200],
    ['10 ft', 3048],
    ['5 ft 3-1/2 in', 1612.9],
    ['2 IN', 50.8],
  ])('%s is %d mm', (text, mm) => {
    const node = nodeOf(text);
    expect(node.kind).toBe('length');
    expect('value' in node ? node.value : undefined).toBeCloseTo(mm, 9);
  });

  test('without a unit 3/8 is a division and 1-1/2 a subtraction', () => {
    expect(formulaText(nodeOf('3/8'))).toBe('3 / 8');
    expect(formulaText(nodeOf('1-1/2'))).toBe('1 - 1 / 2');
  });

  test('a name before the dash keeps it a subtraction', () => {
    expect(formulaText(nodeOf('rail-1/2 in'))).toBe('rail - 12.7 mm');
  });

  test('a word behind a number may be one of the logic', () => {
    expect(formulaText(nodeOf('a > 2 and b < 3'))).toBe('a > 2 and b < 3');
  });
});

describe('mistakes are told with their column', () => {
  test.each([
    ['', 'f:3:10: There is no formula behind the =. Write one such as = seat + 2 * planter.'],
    [
      'seat +',
      'f:3:16: The formula needs a name, a number or a length here and has the end of the formula.',
    ],
    [
      'seat $ 2',
      'f:3:15: "$" means nothing in a formula. Use + - * / ( ) , and = != < <= > >= with names, numbers and lengths.',
    ],
    [
      '2 * (a + b',
      'f:3:20: The formula needs a closing parenthesis here and has the end of the formula.',
    ],
    [
      'a b',
      'f:3:12: The formula needs a sign such as + or the end of the formula here and has "b".',
    ],
    ['a < b < c', 'f:3:16: Two comparisons stand in one row. Join them with and: a < b and b < c.'],
    [
      'mni(a, b)',
      'f:3:10: "mni" is not something a formula can do. Did you mean min? There are min, max, floor, ceil, round, abs and if.',
    ],
    [
      'if(a, b)',
      'f:3:10: if takes 3 values and is given 2. Write if(condition, value, other value).',
    ],
    [
      '5 inn',
      'f:3:10: "inn" is not a unit of length. Did you mean in? Units are ft, in, m, cm and mm, as in 5 ft 3-1/2 in or 1180 mm.',
    ],
    [
      'a = "thick',
      'f:3:14: A text begins here and has no closing quote. Write it such as slat = "thick".',
    ],
    ['3/0 in', 'f:3:10: "3/0" divides by zero. Write it such as 5/8 in.'],
    [
      '1e999',
      'f:3:11: The formula needs a sign such as + or the end of the formula here and has "e999".',
    ],
    [
      `9${'9'.repeat(400)}`,
      'f:3:10: "99999999999999999999999999999999..." is too large a number. Check it for a slip of the keys.',
    ],
  ])('%s', (text, said) => {
    expect(complaint(text)).toBe(said);
  });

  test('a formula longer than 500 characters is refused', () => {
    expect(complaint(`1${' + 1'.repeat(200)}`)).toBe(
      'f:3:10: This formula has 801 characters, more than 500. Give a part of it a name under let.',
    );
  });

  test.each([['('], ['-'], ['not '], ['abs(']])('%s nested 200 deep is refused', start => {
    expect(complaint(`${start.repeat(Math.floor(480 / start.length))}1`)).toContain(
      'more than 40 parentheses inside each other',
    );
  });
});

const name = fc
  .constantFrom('seat', 'rail.width', 'pots.diameter.sum', 'a_1')
  .map((id): Node => ({ kind: 'name', name: id, at: AT }));
const leaf: fc.Arbitrary<Node> = fc.oneof(
  name,
  fc.nat(5000).map((n): Node => ({ kind: 'number', value: n / 8 })),
  fc.integer({ min: 0, max: 4000 }).map((n): Node => ({ kind: 'length', value: n / 4 })),
  fc.constantFrom('thick', '2x4', '').map((value): Node => ({ kind: 'text', value })),
  fc.boolean().map((value): Node => ({ kind: 'flag', value })),
);
const { node: anyNode } = fc.letrec<{ node: Node }>(tie => ({
  node: fc.oneof(
    { maxDepth: 4 },
    leaf,
    tie('node').map((of): Node => ({ kind: 'minus', of })),
    tie('node').map((of): Node => ({ kind: 'not', of })),
    fc
      .tuple(
        fc.constantFrom('+', '-', '*', '/', '=', '!=', '<', '<=', '>', '>=', 'and', 'or'),
        tie('node'),
        tie('node'),
      )
      .map(([op, left, right]): Node => ({ kind: 'binary', op, left, right, at: AT })),
    fc
      .tuple(tie('node'), tie('node'))
      .map((of): Node => ({ kind: 'call', name: 'min', of, at: AT })),
  ),
}));

/** The node without its places, lengths to a millionth of a mm. */
function shape(node: Node): unknown {
  return JSON.parse(
    JSON.stringify(node, (key, value) => {
      if (key === 'at') return undefined;
      return typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value;
    }),
  );
}

describe('any formula', () => {
  test('reads back the same when it is written out', () => {
    fc.assert(
      fc.property(anyNode, node => {
        const text = formulaText(node);
        fc.pre(text.length <= 500);
        expect(shape(nodeOf(text))).toEqual(shape(node));
      }),
    );
  });

  test('is read or refused, never thrown, whatever the text', () => {
    const pieces = fc.constantFrom(
      '(',
      ')',
      '-',
      ',',
      'if(',
      '"',
      '1',
      ' in',
      'not ',
      '=',
      'a',
      '/',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.array(pieces, { maxLength: 60 }).map(all => all.join('')),
    );
    fc.assert(
      fc.property(text, given => {
        const read = parseFormula(given, placeOf);
        if (isProblem(read)) expect(problemLine(read, 'f')).toMatch(/^f:3:\d+: \S/);
      }),
      { numRuns: 500 },
    );
  });
});
