import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cleanText } from '../../src/recipe/clean-text.js';
import { sourceOffsets } from '../../src/recipe/read/source-offsets.js';

test.each([
  ['  a \n  b\t c ', 'a b c'],
  ['\u001b[1;31mred\u001b[0m', 'red'],
  ['\u009b31mred', 'red'],
  ['\u001b]0;a title\u0007after', 'after'],
  ['\u001b]8;;x\u001b\\link', 'link'],
  ['\u001bPdevice\u001b\\after', 'after'],
  ['\u001bcreset', 'reset'],
  ['a\u0000b\u0007c\u007f', 'abc'],
  ['a\u202eb\u200bc\ufeff', 'abc'],
  ['3½ in × 2 — naïve 木', '3½ in × 2 — naïve 木'],
])('%j becomes %j', (text, clean) => {
  expect(cleanText(text)).toBe(clean);
});

test('nothing that could steer a terminal is left of any text', () => {
  const text = fc.string({
    unit: fc.constantFrom(
      '\u001b',
      '[',
      ']',
      '\u009b',
      '\u0007',
      'a',
      '3',
      'm',
      ';',
      '\n',
      '\ud800',
    ),
  });
  fc.assert(
    fc.property(fc.oneof(text, fc.string({ unit: 'binary' })), given => {
      expect(cleanText(given)).not.toMatch(/[\p{Cc}\p{Cs}]/u);
    }),
  );
});

test('each letter of a quoted text is found again in its source', () => {
  // A JSON text is a double-quoted YAML text: YAML 1.2, section 1.3.
  fc.assert(
    fc.property(fc.string({ unit: 'binary-ascii', maxLength: 40 }), text => {
      const source = JSON.stringify(text);
      const offsets = sourceOffsets(text, source);
      const again = offsets.map((start, i) =>
        JSON.parse(`"${source.slice(start, offsets[i + 1] ?? -1)}"`),
      );
      expect(again.join('')).toBe(text);
    }),
  );
});
