import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import {
  evaluate,
  explain,
  flagOf,
  lengthOf,
  numberOf,
  type Scope,
  textOf,
} from '../../src/recipe/evaluate.js';
import type { Formula } from '../../src/recipe/formula.js';
import { isProblem, parseFormula } from '../../src/recipe/parse-formula.js';
import { problemLine } from '../../src/recipe/problem-words.js';
import type { Value } from '../../src/recipe/values.js';

const INCH = 127 / 5;

const VALUES: Readonly<Record<string, Value>> = {
  seat: { kind: 'number', value: 48 * INCH, power: 1 },
  planter: { kind: 'number', value: 18 * INCH, power: 1 },
  'frame.thickness': { kind: 'number', value: 1.5 * INCH, power: 1 },
  count: { kind: 'number', value: 13, power: 0 },
  none: { kind: 'number', value: 0, power: 0 },
  slat: { kind: 'text', value: 'thick' },
  roof: { kind: 'flag', value: true },
};

const SCOPE: Scope = { find: name => VALUES[name] };

function formulaOf(text: string): Formula {
  const read = parseFormula(text, offset => ({ line: 7, column: 4 + offset }));
  if (isProblem(read)) throw new Error(problemLine(read, 'formula'));
  return read;
}

function worked(text: string): Value | string {
  const found = evaluate(formulaOf(text), SCOPE);
  return found.ok ? found.value : problemLine(found.problem, 'f');
}

// Sums done by hand in inches.
describe('a length comes out in mm', () => {
  test.each([
    ['seat + 2 * planter', 84],
    ['seat - 2 * frame.thickness', 45],
    ['(seat - 6 in) / 2', 21],
    ['max(planter, 20 in)', 20],
    ['min(planter, 20 in, seat)', 18],
    ['-planter + seat', 30],
    ['abs(planter - seat)', 30],
    ['if(slat = "thick", 24 in, 16 in)', 24],
    ['if(roof and count < 13, 1 in, 2 in)', 2],
    ['max(0, planter - seat)', 0],
    ['0 + planter', 18],
    ['none + planter', 18],
    ['seat * planter / seat', 18],
  ])('%s is %d in', (text, inches) => {
    const length = lengthOf(formulaOf(text), SCOPE);
    expect(length).toBeCloseTo(inches * INCH, 6);
  });
});

describe('a plain number', () => {
  test.each([
    ['seat / planter', 48 / 18],
    ['ceil(seat / 6 in)', 8],
    ['ceil(seat / 6 in + 0.01)', 9],
    ['floor(seat / 5 in)', 9],
    ['round(2.5)', 3],
    ['ceil(0.3 / 0.1)', 3],
    ['floor(0.3 / 0.1)', 3],
    ['count - 1 - 2', 10],
    ['12 / 2 / 3', 2],
  ])('%s is %d', (text, number) => {
    expect(numberOf(formulaOf(text), SCOPE)).toBeCloseTo(number, 9);
  });
});

describe('a yes or no', () => {
  test.each([
    ['seat > planter', true],
    ['not seat > planter', false],
    ['seat = 4 ft', true],
    ['1 in / 3 * 3 = 1 in', true],
    ['seat != 4 ft', false],
    ['seat <= 4 ft and seat >= 4 ft', true],
    ['slat = "thin" or roof', true],
    ['slat != "thin"', true],
    ['roof = yes', true],
    ['planter > 0', true],
  ])('%s is %s', (text, flag) => {
    expect(flagOf(formulaOf(text), SCOPE)).toBe(flag);
  });
});

describe('what cannot be worked out is told with its place', () => {
  test.each([
    [
      'seat + seat * planter',
      'f:7:9: A length and an area cannot be added. A length times a length is an area; divide one of them out again.',
    ],
    [
      'seat - 2',
      'f:7:9: A length and a plain number cannot be subtracted. Give the number its unit, such as 2 in.',
    ],
    [
      'seat < 2',
      'f:7:9: A length and a plain number cannot be compared. Give the number its unit, such as 2 in.',
    ],
    [
      'max(seat, 2)',
      'f:7:4: A length and a plain number cannot be compared. Give the number its unit, such as 2 in.',
    ],
    ['ceil(seat)', 'f:7:4: ceil needs a plain number and gets a length.'],
    [
      'seat / (count - 13)',
      'f:7:9: This divides by "count - 13", which is zero. Keep it from being zero with max, or with if.',
    ],
    ['seat + sead', 'f:7:11: Nothing here is called "sead".'],
    ['seat + slat', 'f:7:11: + needs a number or a length and gets a text.'],
    ['not seat', 'f:7:8: not needs a yes or no and gets a length.'],
    ['slat < "z"', 'f:7:9: Each side of < needs a number or a length and gets a text.'],
    ['seat = "long"', 'f:7:9: A length and a text cannot be compared.'],
    ['if(count, 1, 2)', 'f:7:7: if needs a yes or no and gets a plain number.'],
    [
      '1000000000000 * 1000000000000',
      'f:7:18: "1000000000000 * 1000000000000" is larger than anything built of wood. Check it for a slip of the keys.',
    ],
  ])('%s', (text, said) => {
    expect(worked(text)).toBe(said);
  });

  test('a name of its own that failed hands its problem on', () => {
    const problem = {
      kind: { is: 'circular', names: ['a', 'b'] },
      at: { line: 2, column: 3 },
    } as const;
    const found = evaluate(formulaOf('1 + a'), { find: () => problem });
    expect(found).toEqual({ ok: false, problem });
  });
});

test('if, and, or look only at what they need', () => {
  expect(worked('if(roof, 1, 1 / 0)')).toMatchObject({ value: 1 });
  expect(worked('roof or nowhere > 2')).toMatchObject({ value: true });
  expect(worked('not roof and nowhere > 2')).toMatchObject({ value: false });
});

describe('a value of another kind than its place wants is refused', () => {
  test.each([
    [
      lengthOf,
      '3',
      'This place needs a length and gets a plain number. Write its unit, such as 2 in.',
    ],
    [lengthOf, 'seat * seat', 'This place needs a length and gets an area.'],
    [numberOf, 'seat', 'This place needs a plain number and gets a length.'],
    [flagOf, 'slat', 'This place needs a yes or no and gets a text.'],
    [textOf, 'roof', 'This place needs a text and gets a yes or no.'],
  ])('%o of %s', (of, text, said) => {
    const found = of(formulaOf(text), SCOPE);
    expect(typeof found === 'object' ? problemLine(found, 'f') : found).toBe(`f:7:4: ${said}`);
  });

  test('a plain 0 is a length', () => {
    expect(lengthOf(formulaOf('0'), SCOPE)).toBe(0);
  });
});

describe('a formula is explained with its numbers', () => {
  test.each([
    ['seat + 2 * planter', 'seat + 2 x planter = 48 in + 2 x 18 in'],
    ['seat', 'seat = 48 in'],
    ['3/8 in', '3/8 in'],
    ['seat - (planter - 1/16 in)', 'seat - (planter - 1/16 in) = 48 in - (18 in - 1/16 in)'],
    ['if(slat = "thick", 24 in, 16 in)', '24 in, since slat is thick'],
    [
      'if(seat - frame.thickness > 24 in, 3, 2)',
      '3, since seat - frame.thickness > 24 in (48 in - 1-1/2 in > 24 in)',
    ],
    [
      'if(planter > seat, seat, planter) / 2',
      'planter / 2 = 18 in / 2, since not planter > seat (not 18 in > 48 in)',
    ],
    ['seat / 13', 'seat / 13 = 48 in / 13'],
    ['ceil(seat / 6 in) + 1', 'ceil(seat / 6 in) + 1 = ceil(48 in / 6 in) + 1'],
    ['nowhere + 1 in', 'nowhere + 1 in'],
  ])('%s', (text, said) => {
    expect(explain(formulaOf(text), SCOPE, SIXTEENTHS)).toBe(said);
  });

  test('in mm for who works in mm', () => {
    expect(explain(formulaOf('seat + 1 in'), SCOPE, MILLIMETERS)).toBe(
      'seat + 25.4 mm = 1219.2 mm + 25.4 mm',
    );
  });
});

test('no formula makes evaluate or explain throw, and no number is endless', () => {
  const word = fc.constantFrom(
    ...Object.keys(VALUES),
    '1',
    '0',
    '3/8 in',
    '"thick"',
    'yes',
    '1 / 0',
  );
  const op = fc.constantFrom('+', '-', '*', '/', '=', '<', 'and', 'or');
  const text = fc
    .array(fc.tuple(word, op), { minLength: 1, maxLength: 12 })
    .chain(pairs => word.map(last => `${pairs.map(pair => pair.join(' ')).join(' ')} ${last}`));
  fc.assert(
    fc.property(text, given => {
      const formula = parseFormula(given, offset => ({ line: 1, column: 1 + offset }));
      if (isProblem(formula)) return;
      const found = evaluate(formula, SCOPE);
      explain(formula, SCOPE, SIXTEENTHS);
      if (found.ok && found.value.kind === 'number') expect(found.value.value).toBeTypeOf('number');
      if (found.ok && found.value.kind === 'number')
        expect(Number.isFinite(found.value.value)).toBe(true);
    }),
    { numRuns: 400 },
  );
});
