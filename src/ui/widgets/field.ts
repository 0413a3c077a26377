import type { Key } from '../screen.js';

/** A line of text being typed: what stands before the cursor and what behind. */
export type Field = { readonly before: string; readonly after: string };

/** A field that holds this text, the cursor at its end. */
export function fieldOf(text: string): Field {
  return { before: text, after: '' };
}

export function fieldText({ before, after }: Field): string {
  return before + after;
}

const LONGEST = 400;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The field after a key, or nothing where the key is none of its own (enter, tab, up, down …). */
export function typeInto({ before, after }: Field, key: Key): Field | undefined {
  switch (key.name) {
    case 'character':
      return added({ before, after }, key.text);
    case 'space':
      return added({ before, after }, ' ');
    case 'clear':
      return fieldOf('');
    case 'backspace':
      return { before: before.slice(0, before.length - lastSign(before).length), after };
    case 'left': {
      const sign = lastSign(before);
      return { before: before.slice(0, before.length - sign.length), after: sign + after };
    }
    case 'right': {
      const sign = firstSign(after);
      return { before: before + sign, after: after.slice(sign.length) };
    }
    case 'home':
      return { before: '', after: before + after };
    case 'end':
      return { before: before + after, after: '' };
    default:
      return undefined;
  }
}

function added({ before, after }: Field, text: string): Field {
  if (before.length + after.length + text.length > LONGEST) return { before, after };
  return { before: before + text, after };
}

function firstSign(text: string): string {
  for (const { segment } of graphemes.segment(text)) return segment;
  return '';
}

function lastSign(text: string): string {
  return Array.from(graphemes.segment(text)).at(-1)?.segment ?? '';
}
