import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { textWidth } from '../../src/text/width.js';

const used = [
  ...range(0x20, 0x7e),
  ...range(0xa0, 0xff),
  ...range(0x2150, 0x215f),
  ...range(0x2190, 0x2193),
  ...range(0x2500, 0x259f),
  ...'–—‘’“”•…′″⁄−≈≠≤≥',
];

function range(first: number, last: number): string[] {
  return Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i));
}

// Unicode Standard Annex #11 (East Asian Width), as the string-width package applies it.
test('the quick count agrees with the measured width for every sign we draw or write', () => {
  const wrong = used.filter(sign => textWidth(sign) !== stringWidth(sign));
  expect(wrong).toEqual([]);
  expect(textWidth(used.join(''))).toBe(stringWidth(used.join('')));
});

test.each([
  ['', 0],
  ['46-1/2 in', 9],
  ['3½ in', 5],
  ['│ rail │', 8],
  ['板', 2],
  ['cafe\u0301', 4],
  ['\u00ad', 0],
])('%j takes %i cells', (text, cells) => {
  expect(textWidth(text)).toBe(cells);
});
