import type { Key } from '../screen.js';
import { type ListRoom, type ListState, listAt, moveList } from './list.js';

/** What a key means in a list whose first nine lines have numbers. */
export type ListPress =
  /** The marked line is taken, or the one of the number. */
  | { readonly kind: 'take' | 'move'; readonly list: ListState }
  | { readonly kind: 'back' | 'keys' | 'none' };

/** Enter, space and numbers take a line, backspace and left go back, the rest moves. */
export function pressList(list: ListState, key: Key, room: ListRoom): ListPress {
  switch (key.name) {
    case 'enter':
    case 'space':
      return { kind: 'take', list };
    case 'backspace':
    case 'left':
      return { kind: 'back' };
    case 'character': {
      if (key.text === '?') return { kind: 'keys' };
      const row = /^[1-9]$/.test(key.text) ? Number(key.text) - 1 : room.count;
      return row < room.count ? { kind: 'take', list: listAt(row, list, room) } : { kind: 'none' };
    }
    default: {
      const moved = moveList(list, key, room);
      return moved === undefined ? { kind: 'none' } : { kind: 'move', list: moved };
    }
  }
}

/** The lines of such a list: `1  Rail`, from the tenth on without a number. */
export function numberedLines(texts: readonly string[]): readonly string[] {
  return texts.map((text, at) => `${at < 9 ? at + 1 : ' '}  ${text}`);
}
