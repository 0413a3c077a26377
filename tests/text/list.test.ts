import { expect, test } from 'vitest';
import { listWords } from '../../src/text/list.js';

test.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b'], 'a and b'],
  [['a', 'b', 'c'], 'a, b and c'],
  [['glue', 'clamps', 'a square', 'a mallet'], 'glue, clamps, a square and a mallet'],
])('%j', (words, text) => {
  expect(listWords(words)).toBe(text);
});

test('a choice is joined with "or"', () => {
  expect(listWords(['1 in', '25 mm', 'a thumb'], 'or')).toBe('1 in, 25 mm or a thumb');
});
