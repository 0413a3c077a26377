import type { Key } from '../screen.js';

/** Where one is in a list: the row that is marked, and the first row in the window. */
export type ListState = { readonly row: number; readonly top: number };

export type ListRoom = { readonly count: number; readonly height: number };

export const LIST_TOP: ListState = { row: 0, top: 0 };

/**
 * The list after a key, or nothing where the key is none of its own. Up and down stop at the ends,
 * page keys move by a window: row 0 of 40 in a window of 12 goes to row 12.
 */
export function moveList(state: ListState, key: Key, room: ListRoom): ListState | undefined {
  const row = movedRow(state.row, key, room);
  return row === undefined ? undefined : listAt(row, state, room);
}

/** The list with that row marked, moved no further than it takes to show it. */
export function listAt(row: number, state: ListState, { count, height }: ListRoom): ListState {
  const last = Math.max(0, count - 1);
  const marked = Math.min(Math.max(0, row), last);
  const window = Math.max(1, height);
  const lowest = Math.max(0, marked - window + 1);
  const highest = Math.min(marked, Math.max(0, count - window));
  const top = Math.min(Math.max(state.top, Math.min(lowest, highest)), Math.max(lowest, highest));
  return { row: marked, top };
}

/** `12/40`, or nothing where the whole list is seen. */
export function listPosition(state: ListState, { count, height }: ListRoom): string {
  return count > height ? `${state.row + 1}/${count}` : '';
}

function movedRow(row: number, key: Key, { count, height }: ListRoom): number | undefined {
  switch (key.name) {
    case 'up':
      return row - 1;
    case 'down':
      return row + 1;
    case 'page-up':
      return row - Math.max(1, height);
    case 'page-down':
      return row + Math.max(1, height);
    case 'home':
      return 0;
    case 'end':
      return count - 1;
    default:
      return undefined;
  }
}
