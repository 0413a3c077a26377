import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatMoney, parseMoney } from '../../src/measure/money.js';

test.each([
  ['7.48', 748],
  ['$7.48', 748],
  ['$ 7.48', 748],
  ['7,48', 748],
  ['7,48 €', 748],
  ['€ 12', 1200],
  ['£3.5', 350],
  ['12', 1200],
  ['12 USD', 1200],
  ['eur 12.30', 1230],
  ['.99', 99],
  ['7.', 700],
  ['0', 0],
  ['1.15', 115],
  ['1,234.50', 123450],
  ['1.234,50', 123450],
  ['999,999.99', 99999999],
])('%s is %d cents', (text, cents) => {
  expect(parseMoney(text)).toEqual({ ok: true, value: cents });
});

test.each([
  ['', 'No price'],
  ['free', 'not a price'],
  ['7.48 a foot', 'not a price'],
  ['-1', 'less than zero'],
  ['1,200', 'as 1.200 or as 1200'],
  ['4.350', 'as 4.350 or as 4350'],
  ['7.4855', 'parts of a cent'],
  ['1,234,567.00', 'more than a million'],
  ['1.2.3', 'not a number'],
  ['99999999', 'more than a million'],
  ['Infinity', 'not a price'],
  ['1e3', 'not a price'],
])('%s is refused', (text, words) => {
  const price = parseMoney(text);
  expect(price.ok ? 'read' : price.problem).toContain(words);
});

test.each([
  [748, '7.48'],
  [5, '0.05'],
  [50, '0.50'],
  [0, '0.00'],
  [-5, '-0.05'],
  [-748, '-7.48'],
  [123450, '1234.50'],
])('%d cents are written %s', (cents, text) => {
  expect(formatMoney(cents)).toBe(text);
});

test('no cent is lost between writing and reading', () => {
  fc.assert(
    fc.property(fc.nat(100_000_000), cents => {
      expect(parseMoney(formatMoney(cents))).toEqual({ ok: true, value: cents });
    }),
  );
});
