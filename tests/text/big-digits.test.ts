import { expect, test } from 'vitest';
import { bigDigits } from '../../src/text/big-digits.js';
import { toAscii } from '../../src/text/safe-text.js';
import { textWidth } from '../../src/text/width.js';

test('a measure in large figures', () => {
  expect(bigDigits('46-1/2 in').map(toAscii)).toEqual([
    '## ##  ###       ##     ## ####     ##      ',
    '## ## ##        ###    ##     ##       #### ',
    '##### ####  ###  ##    ##   ###     ## ## ##',
    '   ## ## ##      ##   ##   ##       ## ## ##',
    '   ##  ###      #### ##    #####    ## ## ##',
  ]);
});

const signs = Array.from('0123456789/-"\'.: min');

test('every figure has five rows of one width, and no two look alike', () => {
  const shapes = signs.map(sign => bigDigits(sign));
  for (const rows of shapes) {
    expect(rows).toHaveLength(5);
    expect(new Set(rows.map(textWidth)).size).toBe(1);
  }
  expect(new Set(shapes.map(rows => rows.join('\n'))).size).toBe(signs.length);
});

test.each(['46-1/2 in', '107-13/16 in', '239-63/64 in', '2389.5 mm', `19' 11-15/16"`])(
  '%s fits on a screen of 80 columns',
  text => {
    for (const row of bigDigits(text)) expect(textWidth(row)).toBeLessThanOrEqual(76);
  },
);

test('a sign without a large figure stands small on the bottom row', () => {
  expect(bigDigits('1x').map(row => row.trimEnd())).toEqual([' ██', '███', ' ██', ' ██', '████ x']);
});

test('no text is five empty rows', () => {
  expect(bigDigits('')).toEqual(['', '', '', '', '']);
});
