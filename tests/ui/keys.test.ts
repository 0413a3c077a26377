import type { Key as InkKey } from 'ink';
import { describe, expect, test } from 'vitest';
import { keysFrom, singleReads } from '../../src/ui/keys.js';
import type { Key } from '../../src/ui/screen.js';

const NO_FLAGS: InkKey = {
  upArrow: false,
  downArrow: false,
  leftArrow: false,
  rightArrow: false,
  pageDown: false,
  pageUp: false,
  home: false,
  end: false,
  return: false,
  escape: false,
  ctrl: false,
  shift: false,
  tab: false,
  backspace: false,
  delete: false,
  meta: false,
  super: false,
  hyper: false,
  capsLock: false,
  numLock: false,
};

/** A key in short: its name, or the character. */
function short(key: Key): string {
  return key.name === 'character' ? key.text : key.name;
}

describe('what a person pressed, out of what the terminal sent in one read', () => {
  const rows: readonly (readonly [string, string, Partial<InkKey>, readonly string[]])[] = [
    ['a letter', 'n', {}, ['n']],
    ['a capital', 'N', { shift: true }, ['N']],
    ['the same key twice', 'aa', {}, ['a', 'a']],
    ['text and enter', 'abc\r', {}, ['a', 'b', 'c', 'enter']],
    ['a line end of two characters', '1\r\n', {}, ['1', 'enter']],
    ['Ctrl-J', '\n', {}, ['enter']],
    ['two backspaces', '\x7f\x7f', {}, ['backspace', 'backspace']],
    ['Ctrl-H', '', { backspace: true }, ['backspace']],
    ['the key that Ink calls delete', '', { delete: true }, ['backspace']],
    ['a space among letters', 'a b', {}, ['a', 'space', 'b']],
    ['an arrow', '', { upArrow: true }, ['up']],
    ['page down, as a clicker sends it', '', { pageDown: true }, ['page-down']],
    ['escape, which Ink marks as meta too', '', { escape: true, meta: true }, ['escape']],
    ['escape and q in one read', 'q', { meta: true }, ['escape', 'q']],
    ['a pasted text with its marks', '[200~5 ft[201~', {}, ['5', 'space', 'f', 't']],
    ['a mark alone', '[200~', {}, []],
    ['a mouse click', '[<0;10;5M', {}, []],
    ['the window coming to the front', '[I', {}, []],
    ['an answer about the terminal', '[?62;c', {}, []],
    ['an answer about colors', ']11;rgb:0000/0000/0000', {}, []],
    ['a bracket that was typed', '[', {}, ['[']],
    ['Ctrl-A', 'a', { ctrl: true }, []],
    ['a letter with its accent apart', 'e\u0301', {}, ['e\u0301']],
    ['a fraction', '½', {}, ['½']],
    ['an unknown control character', '\x01', {}, []],
  ];

  test.each(rows)('%s', (_, input, flags, wanted) => {
    expect(keysFrom(input, { ...NO_FLAGS, ...flags }).map(short)).toEqual(wanted);
  });
});

describe('one read of the terminal is handed on key by key', () => {
  const rows: readonly (readonly [string, string, readonly string[]])[] = [
    ['a number and enter', '1\r', ['1', '\r']],
    ['arrows stay whole', '\x1b[B\x1b[B\r', ['\x1b[B', '\x1b[B', '\r']],
    ['arrows of the other mode', '\x1bOA', ['\x1bOA']],
    ['escape alone', '\x1b', ['\x1b']],
    ['escape and a letter', '\x1bq', ['\x1b', 'q']],
    [
      'page down, home, end, delete',
      '\x1b[6~\x1b[H\x1b[F\x1b[3~',
      ['\x1b[6~', '\x1b[H', '\x1b[F', '\x1b[3~'],
    ],
    ['a paste without its marks', '\x1b[200~ab\x1b[201~', ['a', 'b']],
    [
      'mouse, focus and answers are left out',
      '\x1b[<0;1;2M\x1b[I\x1b[O\x1b[?62;c\x1b]11;x\x07',
      [],
    ],
    ['Ctrl-C and Ctrl-Z come through, Ctrl-A does not', '\x03\x1a\x01', ['\x03', '\x1a']],
    ['Ctrl-U as the arrow that clears a line', 'a\x15b', ['a', '\x1b[1;8A', 'b']],
    ['an F key', '\x1b[15~', ['\x1b[15~']],
  ];

  test.each(rows)('%s', (_, chunk, wanted) => {
    expect(singleReads(chunk)).toEqual(wanted);
  });
});
