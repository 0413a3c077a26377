const FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅒': '1/10',
};

const SIGN = `[${Object.keys(FRACTIONS).join('')}]`;
const SIGN_BEHIND_DIGIT = new RegExp(`(?<=\\d)(?:\\s*|-)(?=${SIGN})`, 'gu');
const ANY_SIGN = new RegExp(SIGN, 'gu');

/**
 * The text of a length in plain keyboard characters: one spelling of primes, quotes, dashes,
 * slashes and spaces, fraction signs written out, small letters. `5’ 3½”` becomes `5' 3 1/2"`.
 */
export function plainLengthText(text: string): string {
  return text
    .replace(SIGN_BEHIND_DIGIT, ' ')
    .replace(ANY_SIGN, sign => FRACTIONS[sign] ?? sign)
    .replace(/[⁄∕]/gu, '/')
    .replace(/[‐‑‒–—―−]/gu, '-')
    .replace(/''|’’|′′|‘‘|``/gu, '"')
    .replace(/[’‘‛′ʹʼ´`]/gu, "'")
    .replace(/[”“„‟″ʺ]/gu, '"')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}
