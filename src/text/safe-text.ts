import { textWidth } from './width.js';

/** Control sequences: `ESC [ ... letter`, and the long kinds up to their end or the line's. */
const SEQUENCES =
  /(?:\x1b\[|\x9b)[0-?]*[ -/]*[@-~]?|(?:\x1b[\]PX^_]|[\x90\x98\x9d-\x9f])[^\x07\x1b\x9c\n]*(?:\x07|\x1b\\|\x9c)?|\x1b[ -/]*[0-~]?/g;

/**
 * Characters nobody sees that change what others see: controls, marks that turn the writing
 * direction, zero-width spaces, half characters, and the sign that makes a symbol an emoji (its
 * width differs between terminals, so borders break).
 */
const UNSEEN =
  /[\x00-\x09\x0b-\x1f\x7f-\x9f\u00ad\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e0fff}]|\p{Variation_Selector}|\p{Cs}/gu;

const TAB = 4;

/**
 * Text from a stranger made fit for a terminal: escape sequences and unseen characters are dropped,
 * tabs become spaces up to the next stop of four, line ends become "\n", accents are composed.
 */
export function safeText(text: string): string {
  return text
    .replace(SEQUENCES, '')
    .replace(/\r\n?|[\x85\u2028\u2029]/g, '\n')
    .split('\n')
    .map(line => withoutTabs(line.replace(/[\x0b\x0c]/g, ' ')).replace(UNSEEN, ''))
    .join('\n')
    .normalize('NFC');
}

function withoutTabs(line: string): string {
  const [first = '', ...rest] = line.split('\t');
  return rest.reduce((done, part) => {
    const seen = done.replace(UNSEEN, '');
    return seen + ' '.repeat(TAB - (textWidth(seen) % TAB)) + part;
  }, first);
}

/** Signs with a stand-in of the same width. Drawings, rules and marks use these only. */
const SAME_WIDTH: Readonly<Record<string, string>> = {
  '─━┄┅┈┉╌╍╴╶╸╺╼╾—–‐‑‒―−': '-',
  '│┃┆┇┊┋╎╏║╵╷╹╻╽╿': '|',
  '═': '=',
  '╱': '/',
  '╲': '\\',
  '╳×✗✘': 'x',
  '█▓▀▁▂▃▄▅▆▇▉▊▋▌▍▎▏▐▔▕▖▗▘▙▚▛▜▝▞▟■▪': '#',
  '▒': ':',
  '░·': '.',
  '←◂◀◄‹': '<',
  '→▸▶►›❯': '>',
  '↑▲▴': '^',
  '↓▼▾✓✔': 'v',
  '↔': '-',
  '↕': '|',
  '•●◆': '*',
  '○◦': 'o',
  '‘’‚‛′´`ʹʼ': "'",
  '“”„‟″«»': '"',
  '⁄∕': '/',
  '≈': '~',
  '²': '2',
  '³': '3',
  µμ: 'u',
  'Ø⌀': 'O',
  ø: 'o',
  '\u00a0\u2002\u2003\u2007\u2009\u202f': ' ',
};

/** Signs whose stand-in is wider. Write them out before laying out lines and tables. */
const WIDER: Readonly<Record<string, string>> = {
  '…': '...',
  '±': '+/-',
  '≤': '<=',
  '≥': '>=',
  '≠': '!=',
  '€': 'EUR',
  '£': 'GBP',
  ß: 'ss',
  æ: 'ae',
  Æ: 'AE',
  œ: 'oe',
  Œ: 'OE',
};

const STAND_INS: ReadonlyMap<string, string> = new Map([
  ...Object.entries(SAME_WIDTH).flatMap(([signs, ascii]) =>
    Array.from(signs, (sign): [string, string] => [sign, ascii]),
  ),
  ...Object.entries(WIDER),
]);

/**
 * Text in plain ASCII, for terminals and printers that have nothing else. Lines, blocks, arrows,
 * quotes, dashes and accented letters keep their width, so a finished drawing can be turned over
 * sign by sign. Fractions (`3½` is "3-1/2"), degrees (`20 °C` is "20 C") and a few more do not: for
 * prose and tables, make ASCII first and lay out after. What has no stand-in becomes "?".
 */
export function toAscii(text: string): string {
  if (/^[\x00-\x7f]*$/.test(text)) return text;
  return text
    .normalize('NFC')
    .replace(/ ?°(?=[FC]\b)/g, ' ')
    .replace(/ ?°/g, ' deg')
    .replace(/[Ø⌀](?= ?\d)/g, 'D')
    .replace(/(\d?)([¼-¾⅐-⅞])/gu, (_, whole: string, sign: string) => writtenOut(whole, sign))
    .replace(/[^\x00-\x7f]\p{M}*/gu, standIn);
}

function writtenOut(whole: string, sign: string): string {
  const fraction = sign.normalize('NFKD').replace('⁄', '/');
  return whole === '' ? fraction : `${whole}-${fraction}`;
}

function standIn(sign: string): string {
  const known = STAND_INS.get(sign);
  if (known !== undefined) return known;
  if (/^[\u2500-\u257f]$/.test(sign)) return '+';
  const [letter = ''] = sign.normalize('NFD');
  if (/^[\x20-\x7e]$/.test(letter)) return letter;
  return '?'.repeat(textWidth(sign));
}
