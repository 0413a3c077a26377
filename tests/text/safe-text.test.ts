import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bigDigits } from '../../src/text/big-digits.js';
import { safeText, toAscii } from '../../src/text/safe-text.js';
import { textWidth } from '../../src/text/width.js';

describe('text from a stranger', () => {
  // Control functions as in ECMA-48; operating system commands and titles as terminals take them.
  test.each([
    ['color', '\x1b[31mred\x1b[0m', 'red'],
    ['cursor and screen', 'a\x1b[2J\x1b[1;1Hb', 'ab'],
    ['window title, ended by a bell', '\x1b]0;owned\x07rail', 'rail'],
    ['link, ended by a string terminator', '\x1b]8;;file:///x\x1b\\rail\x1b]8;;\x1b\\', 'rail'],
    ['title left open, up to the end of the line', '\x1b]0;owned\nrail', '\nrail'],
    ['device string', '\x1bPq#0\x1b\\rail', 'rail'],
    ['one-character controls', '\x9b31mred', 'red'],
    ['reset', '\x1bcrail', 'rail'],
    ['lone escape at the end', 'rail\x1b', 'rail'],
    ['escape inside an escape', '\x1b[\x1b[31m31mx', '31mx'],
    ['bell and backspace', 'ra\x07i\x08l\x7f', 'rail'],
    ['nul', 'ra\0il', 'rail'],
    ['turned writing', 'abc\u202edef\u2066', 'abcdef'],
    ['zero-width space and byte order mark', '\ufeffra\u200bil', 'rail'],
    ['soft hyphen', 'ra\u00adil', 'rail'],
    ['symbol made an emoji', '⚠\ufe0f glue', '⚠ glue'],
    ['half a character', 'a\ud800b', 'ab'],
    ['line ends of all kinds', 'a\r\nb\rc\u2028d', 'a\nb\nc\nd'],
    ['tab stops of four', 'a\tb\tc\n\td', 'a   b   c\n    d'],
    ['tab behind something unseen', 'a\u200b\tb', 'a   b'],
    ['accents composed', 'cafe\u0301', 'café'],
    ['honest text', '3½" × 46-1/2 in, 20 °C: “Bob’s” rail', '3½" × 46-1/2 in, 20 °C: “Bob’s” rail'],
  ])('%s', (_, text, shown) => {
    expect(safeText(text)).toBe(shown);
  });

  test('never holds a control character but line ends, whatever comes in', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '\x1b',
        '\x1b[',
        '\x1b]',
        '\x9b',
        '\x07',
        '\x1b\\',
        '\t',
        '\r',
        '31m',
        '\u202e',
      ),
    );
    fc.assert(
      fc.property(fc.array(piece), pieces => {
        const shown = safeText(pieces.join(''));
        expect(shown).not.toMatch(/[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]/);
        expect(safeText(shown)).toBe(shown);
      }),
    );
  });
});

// Unicode Standard Annex #9 (direction marks), ECMA-6 and ECMA-48 (C0 and C1 controls).
test('every control and direction mark is dropped or made a space or a line end', () => {
  const codes = [
    ...Array.from({ length: 0xa0 }, (_, code) => code).filter(code => code < 0x20 || code > 0x7e),
    ...[0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069],
  ];
  for (const code of codes) {
    expect(safeText(`a${String.fromCharCode(code)}`), code.toString(16)).toMatch(/^a[ \n]*$/);
  }
});

describe('plain ASCII', () => {
  test.each([
    ['┌─┬─┐', '+-+-+'],
    ['│ ║ ═ ╬', '| | = +'],
    ['█▓▀▄▌▐▒░', '######:.'],
    ['←→↑↓', '<>^v'],
    ['2 × 4', '2 x 4'],
    ['“Bob’s” – rail', '"Bob\'s" - rail'],
    ['café Østen', 'cafe Osten'],
    ['漢字', '????'],
    ['m²', 'm2'],
    ['46\u00a0in', '46 in'],
    ['cafe\u0301', 'cafe'],
  ])('%s keeps its width as %s', (text, ascii) => {
    expect(toAscii(text)).toBe(ascii);
    expect(textWidth(text)).toBe(ascii.length);
  });

  test.each([
    ['3½ in', '3-1/2 in'],
    ['½ in', '1/2 in'],
    ['⅛ ⅜ ⅝ ⅞', '1/8 3/8 5/8 7/8'],
    ['20 °C, 68°F', '20 C, 68 F'],
    ['cut at 45°', 'cut at 45 deg'],
    ['Ø 3/16 in', 'D 3/16 in'],
    ['and so on…', 'and so on...'],
    ['12 €', '12 EUR'],
    ['≤ ± ≥', '<= +/- >='],
  ])('%s is written out as %s', (text, ascii) => {
    expect(toAscii(text)).toBe(ascii);
  });

  test('drawings can be turned over sign by sign: lines, blocks and arrows keep their width', () => {
    for (const [first, last] of [
      [0x2500, 0x259f],
      [0x2190, 0x2195],
      [0xc0, 0xc5],
    ] as const) {
      for (let code = first; code <= last; code += 1) {
        const sign = String.fromCodePoint(code);
        expect(toAscii(sign), sign).toMatch(/^[\x21-\x7e]$/);
        expect(toAscii(sign), sign).not.toBe('?');
      }
    }
  });

  test('nothing but ASCII comes out, whatever goes in', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), text => {
        expect(toAscii(text)).toMatch(/^[\x00-\x7f]*$/);
      }),
    );
    expect(bigDigits('46-1/2 in').map(toAscii).join('')).toMatch(/^[# ]+$/);
  });
});
