import fc from 'fast-check';
import { renderToString } from 'ink';
import { createElement } from 'react';
import { describe, expect, test } from 'vitest';
import { wantsAscii } from '../../src/ui/ascii-mode.js';
import { hintRows } from '../../src/ui/hint-rows.js';
import type { Key } from '../../src/ui/screen.js';
import { LookProvider } from '../../src/ui/theme.js';
import { fieldOf, fieldText, typeInto } from '../../src/ui/widgets/field.js';
import { LIST_TOP, listPosition, moveList } from '../../src/ui/widgets/list.js';
import { cleanLine, TextLine } from '../../src/ui/widgets/text-line.js';
import { windowSize } from '../../src/ui/window-size.js';

const MOVES = ['up', 'down', 'page-up', 'page-down', 'home', 'end'] as const;

describe('a long list', () => {
  test('page down goes on by a window and says where one is', () => {
    const room = { count: 40, height: 12 };
    const state = moveList(LIST_TOP, { name: 'page-down' }, room) ?? LIST_TOP;
    expect(listPosition(state, room)).toBe('13/40');
  });

  test('the marked row is always there and always in the window', () => {
    const moves = fc.array(fc.constantFrom(...MOVES), { maxLength: 40 });
    const sizes = fc.record({
      count: fc.integer({ min: 1, max: 60 }),
      height: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(moves, sizes, (names, room) => {
        let state = LIST_TOP;
        for (const name of names) {
          state = moveList(state, { name }, room) ?? state;
          expect(state.row).toBeGreaterThanOrEqual(0);
          expect(state.row).toBeLessThan(room.count);
          expect(state.row - state.top).toBeGreaterThanOrEqual(0);
          expect(state.row - state.top).toBeLessThan(room.height);
        }
      }),
    );
  });

  test('leaves keys that are none of its own to the screen', () => {
    expect(moveList(LIST_TOP, { name: 'enter' }, { count: 3, height: 3 })).toBeUndefined();
  });
});

describe('a line being typed', () => {
  const typed = (start: string, keys: readonly Key[]) =>
    fieldText(keys.reduce((field, key) => typeInto(field, key) ?? field, fieldOf(start)));

  test('backspace takes a whole sign, also one of several parts', () => {
    expect(typed('ae\u0301', [{ name: 'backspace' }])).toBe('a');
  });

  test('what is typed goes where the cursor is', () => {
    const keys: Key[] = [{ name: 'home' }, { name: 'right' }, { name: 'character', text: '/' }];
    expect(typed('12', keys)).toBe('1/2');
  });

  test('going left and right changes nothing', () => {
    const keys = fc.array(fc.constantFrom('left', 'right', 'home', 'end'), { maxLength: 20 });
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 20 }), keys, (text, names) => {
        expect(
          typed(
            text,
            names.map(name => ({ name }) as Key),
          ),
        ).toBe(text);
      }),
    );
  });
});

test('a pasted name ends at its first line end and holds no control characters', () => {
  expect(cleanLine('Roof\x1b bench\r\nmore')).toEqual({ line: 'Roof bench', ended: true });
  expect(cleanLine('[200~Roof[201~')).toEqual({ line: 'Roof', ended: false });
});

test('keys fill two rows at most, none of them wider than the window', () => {
  const hints = Array.from({ length: 30 }, (_, i) => ({ key: `${i}`, does: 'something' }));
  const rows = hintRows(hints, 80);
  expect(rows).toHaveLength(2);
  for (const row of rows) {
    expect(row.map(({ key, does }) => `[${key}] ${does}`).join('  ').length).toBeLessThanOrEqual(
      80,
    );
  }
});

describe('plain ASCII', () => {
  test.each([
    [{ TERM: 'xterm', LANG: 'en_US.UTF-8' }, 'linux', false],
    [{ TERM: 'xterm', LANG: 'C' }, 'linux', true],
    [{ TERM: 'xterm', LANG: 'en_US.UTF-8', LC_ALL: 'POSIX' }, 'linux', true],
    [{ TERM: 'xterm' }, 'linux', true],
    [{ TERM: 'linux', LANG: 'en_US.UTF-8' }, 'linux', true],
    [{ TERM: 'dumb', LANG: 'en_US.UTF-8' }, 'linux', true],
    [{}, 'win32', true],
    [{ WT_SESSION: '1' }, 'win32', false],
    [{ LANG: 'en_US.UTF-8', NOTCHBOOK_ASCII: '1' }, 'linux', true],
  ])('%o on %s: %s', (env, platform, wanted) => {
    expect(wantsAscii(env, platform)).toBe(wanted);
  });
});

test('a terminal that does not know its width counts as 80 by 24', () => {
  expect(windowSize({})).toEqual({ columns: 80, rows: 24 });
  expect(windowSize({ columns: 0, rows: 0 })).toEqual({ columns: 80, rows: 24 });
  expect(windowSize({ columns: 120, rows: 40 })).toEqual({ columns: 120, rows: 40 });
});

test.each([
  [true, 'nothing to remember'],
  [false, '(nothing to remember)'],
])(
  "a hint in an empty line is no text of one's own: with styles %s it reads %s",
  (styled, expected) => {
    const line = createElement(TextLine, { value: '', hint: 'nothing to remember' });
    const look = createElement(LookProvider, { value: { ascii: false, styled } }, line);
    expect(renderToString(look).replace(/\u001b\[[\d;]*m/g, '')).toBe(expected);
  },
);
