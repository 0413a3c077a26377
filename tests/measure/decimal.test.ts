import { expect, test } from 'vitest';
import { readDecimal } from '../../src/measure/decimal.js';

test.each([
  ['63', '63'],
  ['63.5', '63.5'],
  ['63,5', '63.5'],
  ['.5', '0.5'],
  ['5.', '5.0'],
  ['0.125', '0.125'],
  ['0,125', '0.125'],
  ['1,2345', '1.2345'],
  ['1234,567', '1234.567'],
  ['1,234.5', '1234.5'],
  ['1.234,5', '1234.5'],
  ['1,234,567', '1234567'],
  ['1.234.567', '1234567'],
  ['1,234,567.89', '1234567.89'],
])('%s is plain', (text, digits) => {
  expect(readDecimal(text)).toEqual({ kind: 'plain', digits });
});

test.each([
  ['1,200', ',', '1.200', '1200'],
  ['12.375', '.', '12.375', '12375'],
])('%s has two readings', (text, mark, asDecimal, asThousands) => {
  expect(readDecimal(text)).toEqual({ kind: 'two-readings', mark, asDecimal, asThousands });
});

test.each(['', '.', ',', '1.2.3', '1,,2', '1,23,456', '1,234,5', '12345,678.9', '1,234.', 'x'])(
  '%j is no number',
  text => {
    expect(readDecimal(text)).toEqual({ kind: 'none' });
  },
);
