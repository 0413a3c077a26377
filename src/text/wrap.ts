import { textWidth } from './width.js';

/**
 * Breaks text at words into lines of at most so many columns. A number stays with its unit (`46-1/2
 * in`, `38 sq ft`) wherever the pair fits; a longer word is broken. Line breaks in the text stay,
 * spaces in a row become one. An empty text is one empty line.
 */
export function wrap(text: string, columns: number): string[] {
  return text.split('\n').flatMap(line => wrapLine(line, Math.max(1, columns)));
}

function wrapLine(text: string, columns: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of boundWords(text).flatMap(words => fitting(words, columns))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer) <= columns) {
      line = longer;
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

const NUMBER = /^[(~±+-]*\d[\d.,/-]*$/;
const UNIT = 'in|ft|mm|cm|m|m2|cm2|yd|lb|kg|g|oz|gal|l|ml|min|h|hours?|d|s|°[FC]?|[FC]|%';
const UNIT_WORD = new RegExp(`^(?:${UNIT})[).,;:!?]*$`);
const UNIT_AHEAD = /^(?:sq|cu|fl)$/;

/** The words of a line, a number and the unit behind it in one. */
export function boundWords(text: string): string[] {
  const bound: string[] = [];
  let before = '';
  for (const word of text.split(/[ \t]+/).filter(found => found !== '')) {
    const belongs = NUMBER.test(before)
      ? UNIT_WORD.test(word) || UNIT_AHEAD.test(word)
      : UNIT_AHEAD.test(before) && UNIT_WORD.test(word) && bound.at(-1) !== before;
    bound.push(belongs ? `${bound.pop()} ${word}` : word);
    before = word;
  }
  return bound;
}

/** A word that fits, or its pieces: first at the spaces inside, then anywhere. */
function fitting(word: string, columns: number): string[] {
  if (textWidth(word) <= columns) return [word];
  if (word.includes(' ')) return word.split(' ').flatMap(part => fitting(part, columns));
  const pieces: string[] = [];
  let rest = word;
  while (rest !== '') {
    const piece = head(rest, columns);
    if (piece === '') break; // One character wider than the page: there is no room to show it.
    pieces.push(piece);
    rest = rest.slice(piece.length);
  }
  return pieces;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** As much of the beginning as fits, never half a wide character: `head('slats', 3)` is "sla". */
export function head(text: string, columns: number): string {
  if (textWidth(text) <= columns) return text;
  let fitting = '';
  let used = 0;
  for (const { segment } of graphemes.segment(text)) {
    used += textWidth(segment);
    if (used > columns) return fitting;
    fitting += segment;
  }
  return fitting;
}

const DOTS = '...';

/**
 * One line cut to fit, with "..." where something is left out. Below four columns there are dots
 * alone: half a number would be a wrong number.
 */
export function cut(text: string, columns: number): string {
  if (textWidth(text) <= columns) return text;
  if (columns <= DOTS.length) return DOTS.slice(0, Math.max(0, columns));
  return head(text, columns - DOTS.length).trimEnd() + DOTS;
}

/** The text with spaces behind it up to so many columns; longer text stays as it is. */
export function padEnd(text: string, columns: number): string {
  return text + spaces(columns - textWidth(text));
}

/** The text with spaces before it up to so many columns; longer text stays as it is. */
export function padStart(text: string, columns: number): string {
  return spaces(columns - textWidth(text)) + text;
}

/** The text in the middle of so many columns, an odd space behind it. */
export function center(text: string, columns: number): string {
  const room = columns - textWidth(text);
  return spaces(Math.floor(room / 2)) + text + spaces(Math.ceil(room / 2));
}

function spaces(count: number): string {
  return ' '.repeat(Math.max(0, count));
}
