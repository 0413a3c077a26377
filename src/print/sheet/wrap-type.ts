import type { Mm } from '../../measure/quantities.js';
import { boundWords } from '../../text/wrap.js';
import type { Points } from './mark.js';
import type { TypeRule } from './type.js';

export type Setting = { readonly rule: TypeRule; readonly size: Points; readonly bold: boolean };

/** Text as lines that fit into a width; a number stays with its unit, a longer word is broken. */
export function wrapType(text: string, width: Mm, setting: Setting): readonly string[] {
  return text.split('\n').flatMap(line => wrapLine(line, width, setting));
}

function wrapLine(text: string, width: Mm, { rule, size, bold }: Setting): readonly string[] {
  const wide = (words: string) => rule(words, size, bold);
  const lines: string[] = [];
  let line = '';
  let used = 0;
  const space = wide(' ');
  for (const word of boundWords(text).flatMap(found => fitting(found, width, wide))) {
    const its = wide(word);
    if (line !== '' && used + space + its > width) {
      lines.push(line);
      line = '';
    }
    used = line === '' ? its : used + space + its;
    line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

function fitting(word: string, width: Mm, wide: (words: string) => Mm): readonly string[] {
  if (wide(word) <= width) return [word];
  if (word.includes(' ')) return word.split(' ').flatMap(part => fitting(part, width, wide));
  const pieces: string[] = [];
  let piece = '';
  for (const sign of word) {
    if (piece !== '' && wide(piece + sign) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += sign;
  }
  return [...pieces, piece];
}
