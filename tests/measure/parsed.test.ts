import { expect, test } from 'vitest';
import { quoted } from '../../src/measure/parsed.js';

test.each([
  ['banana', '"banana"'],
  ['  3 ft ', '"3 ft"'],
  ['a\x1b[31mb\nc', '"a [31mb c"'],
  ['x'.repeat(50), `"${'x'.repeat(32)}..."`],
  ['\u202eabc', '"abc"'],
])('%j is quoted as %s', (text, shown) => {
  expect(quoted(text)).toBe(shown);
});
