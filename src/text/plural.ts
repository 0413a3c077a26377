import { formatNumber } from '../measure/format-number.js';

const IRREGULAR: Readonly<Record<string, string>> = {
  foot: 'feet',
  half: 'halves',
  knife: 'knives',
  leaf: 'leaves',
  person: 'people',
  shelf: 'shelves',
};

/**
 * More than one of a thing: "slats", "boxes of screws" (what stands before "of" is counted), "stop
 * blocks". A thing that does not end in a letter stays as it is: "2x4".
 */
export function plural(thing: string): string {
  const [counted = '', ...content] = thing.split(/(?= of )/);
  return counted.replace(/[a-z]+$/, pluralWord) + content.join('');
}

function pluralWord(word: string): string {
  const known = IRREGULAR[word];
  if (known !== undefined) return known;
  if (/(?:s|x|z|ch|sh)$/.test(word)) return `${word}es`;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return `${word}s`;
}

/** A number of things: "1 slat", "12 slats", "0 boards", "1.5 hours". */
export function count(n: number, thing: string): string {
  return `${formatNumber(n, 2)} ${n === 1 ? thing : plural(thing)}`;
}
