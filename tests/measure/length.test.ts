import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseLength } from '../../src/measure/length.js';
import { inchesToMm, ratio, toNumber } from './exact.js';

function read(text: string, assume: 'inch' | 'metric' = 'inch'): number | string {
  const length = parseLength(text, assume);
  return length.ok ? length.value : length.problem;
}

// Worked by hand with 1 in = 25.4 mm and 1 ft = 304.8 mm (NIST SP 811, B.8).
describe('lengths in feet and inches', () => {
  test.each([
    [`5' 3-1/2"`, 1612.9],
    [`5' 3 1/2"`, 1612.9],
    [`5'3-1/2"`, 1612.9],
    [`5'-3 1/2"`, 1612.9],
    [`5' - 3 1/2"`, 1612.9],
    [`5' 3½"`, 1612.9],
    ['5’ 3½”', 1612.9],
    ['5′ 3½″', 1612.9],
    [`5' 3 1/2''`, 1612.9],
    ['5 ft 3 1/2 in', 1612.9],
    ['5 ft. 3-1/2 in.', 1612.9],
    ['5 feet, 3.5 inches', 1612.9],
    ['5 FT 3.5 IN', 1612.9],
    ['63.5in', 1612.9],
    ['63.5 inch', 1612.9],
    ['63,5 in', 1612.9],
    ['5ft3in', 1600.2],
    ["5' 3", 1600.2],
    ["5' 3 1/2", 1612.9],
    ['5\u00a0ft\u202f3\u2009in', 1600.2],
    ["1'", 304.8],
    ['8 foot', 2438.4],
    ['8 feet', 2438.4],
    ['2.5 ft', 762],
    ['1/2 ft', 152.4],
    ['3½"', 88.9],
    ['3 ½ in', 88.9],
    ['3-½ in', 88.9],
    ['3 1⁄2 in', 88.9],
    ['3–1/2 in', 88.9],
    ['7/2 in', 88.9],
    ['31/2 in', 393.7],
    ['3/8"', 9.525],
    ['⅜ in', 9.525],
    ['⅛ in', 3.175],
    ['⅝ in', 15.875],
    ['⅞ in', 22.225],
    ['¼ in', 6.35],
    ['¾ in', 19.05],
    ['1/64 in', 0.396875],
    ['.5 in', 12.7],
    ['5. in', 127],
    ['1.125 in', 28.575],
    ['0,375 in', 9.525],
    ['1,234.5 in', 31356.3],
    ['  46-1/2 in  ', 1181.1],
    ['0', 0],
    ['0 in', 0],
  ])('%s', (text, mm) => {
    expect(read(text)).toBe(mm);
  });

  test('a third of an inch is read, though no tape shows it', () => {
    expect(read('⅓ in')).toBeCloseTo(25.4 / 3, 8);
    expect(read('1/3 in')).toBeCloseTo(25.4 / 3, 8);
    expect(read('1⅔ in')).toBeCloseTo((25.4 * 5) / 3, 8);
  });
});

describe('metric lengths', () => {
  test.each([
    ['1.2 m', 1200],
    ['1,2 m', 1200],
    ['1,5 m', 1500],
    ['1.200 m', 1200],
    ['1,200 m', 1200],
    ['1.005 m', 1005],
    ['2 meters', 2000],
    ['2 metres', 2000],
    ['8.8 cm', 88],
    ['8,8cm', 88],
    ['88mm', 88],
    ['88 MM', 88],
    ['0.5 mm', 0.5],
    ['12.5 mm', 12.5],
    ['0,125 mm', 0.125],
    ['1,234.5 mm', 1234.5],
    ['1.234,5 mm', 1234.5],
    ['1 m 20 cm', 1200],
    ['1 m 20 cm 5 mm', 1205],
    ['1/2 m', 500],
  ])('%s', (text, mm) => {
    expect(read(text, 'inch')).toBe(mm);
    expect(read(text, 'metric')).toBe(mm);
  });
});

test.each([
  ['63.5', 1612.9, 63.5],
  ['12', 304.8, 12],
  ['0.5', 12.7, 0.5],
])('%s without a unit follows the unit the user works in', (text, inch, metric) => {
  expect(read(text, 'inch')).toBe(inch);
  expect(read(text, 'metric')).toBe(metric);
});

test('a unit that is written wins over the one the user works in', () => {
  expect(read('3-1/2 in', 'metric')).toBe(88.9);
  expect(read("5' 3", 'metric')).toBe(1600.2);
  expect(read('88 mm', 'inch')).toBe(88);
});

const spellings: readonly ((feet: number, whole: number, fraction: string) => string)[] = [
  (feet, whole, fraction) => `${feet}' ${whole}-${fraction}"`,
  (feet, whole, fraction) => `${feet}'${whole} ${fraction}"`,
  (feet, whole, fraction) => `${feet} ft ${whole} ${fraction} in`,
  (feet, whole, fraction) => `${feet}ft${whole}-${fraction}in`,
  (feet, whole, fraction) => `${feet}’-${whole} ${fraction}″`,
  (feet, whole, fraction) => `${feet} feet ${whole}-${fraction}`,
  (feet, whole, fraction) => `${feet * 12 + whole}-${fraction}`,
];

test('every spelling of feet, inches and sixty-fourths gives the exact length', () => {
  fc.assert(
    fc.property(
      fc.nat(99),
      fc.nat(11),
      fc.integer({ min: 1, max: 6 }),
      fc.nat(62),
      fc.constantFrom(...spellings),
      (feet, whole, power, n, spell) => {
        const parts = 2 ** power;
        const top = 1 + (n % (parts - 1));
        const exact = inchesToMm(ratio((12 * feet + whole) * parts + top, parts));
        expect(read(spell(feet, whole, `${top}/${parts}`))).toBe(toNumber(exact));
      },
    ),
  );
});

test('decimals of an inch and of metric units give the exact length', () => {
  fc.assert(
    fc.property(fc.nat(99_999), fc.integer({ min: 1, max: 2 }), (n, places) => {
      const text = `${Math.floor(n / 10 ** places)}.${String(n % 10 ** places).padStart(places, '0')}`;
      expect(read(`${text} mm`)).toBe(toNumber(ratio(n, 10 ** places)));
      expect(read(`${text} cm`)).toBe(toNumber(ratio(n * 10, 10 ** places)));
      const inch = toNumber(inchesToMm(ratio(n, 10 ** places)));
      if (inch <= 100_000) expect(read(`${text} in`)).toBe(inch);
    }),
  );
});
