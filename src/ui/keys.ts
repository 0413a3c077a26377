import type { Key as InkKey } from 'ink';
import type { Key } from './screen.js';

/**
 * The keys in what Ink reports of one read. Slow links, key repeat and bouncing gloves bring several
 * keys in one read, pastes bring whole texts: `"abc\\r"` is three characters and enter. Answers of the
 * terminal (mouse, focus, cursor) are no keys, nor are the marks around a paste.
 */
export function keysFrom(input: string, key: InkKey): readonly Key[] {
  const named = namedKey(key);
  if (named !== undefined) return [named];
  if (key.ctrl || isReply(input)) return [];
  const typed = signs(input.replace(/\x1b?\[20[01]~/g, '')).flatMap(keyOf);
  // Escape and a letter in one read look like Alt and the letter, which nothing here listens to.
  return key.meta && typed.length > 0 ? [{ name: 'escape' }, ...typed] : typed;
}

function namedKey(key: InkKey): Key | undefined {
  if (key.upArrow && key.ctrl && key.shift) return { name: 'clear' };
  if (key.upArrow) return { name: 'up' };
  if (key.downArrow) return { name: 'down' };
  if (key.leftArrow) return { name: 'left' };
  if (key.rightArrow) return { name: 'right' };
  if (key.home) return { name: 'home' };
  if (key.end) return { name: 'end' };
  if (key.pageUp) return { name: 'page-up' };
  if (key.pageDown) return { name: 'page-down' };
  if (key.return) return { name: 'enter' };
  if (key.escape) return { name: 'escape' };
  if (key.tab) return { name: 'tab' };
  // Ink 6 calls the backspace key "delete"; both take back one character.
  if (key.backspace || key.delete) return { name: 'backspace' };
  return undefined;
}

/** Whether text is a terminal's answer without its escape: mouse, focus, device, color. */
function isReply(input: string): boolean {
  return /^\x1b?(?:\[[<?]?[\d;:]*[ -/]*[@-Z\\^-~]|\][\d;]+.*)$/s.test(input) && input.length > 1;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

function signs(text: string): string[] {
  return Array.from(graphemes.segment(text), ({ segment }) => segment);
}

function keyOf(sign: string): readonly Key[] {
  switch (sign) {
    case '\r':
    case '\n':
    case '\r\n':
      return [{ name: 'enter' }];
    case '\x7f':
    case '\b':
      return [{ name: 'backspace' }];
    case '\t':
      return [{ name: 'tab' }];
    case '\x1b':
      return [{ name: 'escape' }];
    case ' ':
    case '\u00a0':
      return [{ name: 'space' }];
    default:
      return /^\p{Cc}/u.test(sign) ? [] : [{ name: 'character', text: sign }];
  }
}

/** Sequences that are keys: arrows, home, end, page keys, delete, and the like. */
const KEY_SEQUENCE = /^\x1b(?:\[(?:[\d;]*[A-HZ]|(?:[1-8]|1\d|2[0-46])(?:;\d)?~)|O[A-Za-z])$/;
const SEQUENCE = /\x1b\[[0-?]*[ -/]*[@-~]|\x1bO[A-Za-z]|\x1b\][^\x07\x1b]*(?:\x07|\x1b\\)/;
/** Longer sequences, and controls other than Ctrl-C, tab, enter, backspace, Ctrl-Z and escape. */
const STRANGE = /^\x1b.|^[\x00-\x02\x04-\x07\x0b\x0c\x0e-\x19\x1c-\x1f]/s;
const TOKENS = new RegExp(`${SEQUENCE.source}|\\r\\n|[\\s\\S]`, 'gu');

/** Ctrl-U goes on as an arrow that nobody presses: as a letter with Ctrl a line for notes would take it for a "u". */
const CLEAR_LINE = '\x1b[1;8A';

/**
 * One read of the terminal as separate reads of one key each, so that widgets written for single
 * keys miss none: `"1\\r"` is `"1"` and `"\\r"`. Answers of the terminal and paste marks are left out.
 */
export function singleReads(chunk: string): readonly string[] {
  return Array.from(chunk.matchAll(TOKENS), ([token]) => (token === '\x15' ? CLEAR_LINE : token))
    .filter(token => KEY_SEQUENCE.test(token) || !STRANGE.test(token))
    .map(token => (token === '\r\n' ? '\r' : token));
}
