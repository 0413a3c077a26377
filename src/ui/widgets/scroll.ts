import type { Key } from '../screen.js';

/** So many lines behind a window so high. */
export type ScrollRoom = { readonly count: number; readonly height: number };

/**
 * The first line seen after a key, or nothing where the key does not scroll. Page keys move by a
 * window less one line, so that the eye finds its place: line 0 of 40 in a window of 12 goes to 11.
 */
export function scrollTo(top: number, key: Key, room: ScrollRoom): number | undefined {
  const moved = movedTop(limitTop(top, room), key, room);
  return moved === undefined ? undefined : limitTop(moved, room);
}

/** The nearest first line at which the window is full. */
export function limitTop(top: number, { count, height }: ScrollRoom): number {
  return Math.max(0, Math.min(top, count - height));
}

/** Whether the last line is seen. */
export function isAtEnd(top: number, room: ScrollRoom): boolean {
  return limitTop(top, room) + room.height >= room.count;
}

/** `lines 1-12 of 40`, or nothing where all are seen. */
export function scrollWords(top: number, room: ScrollRoom): string {
  if (room.count <= room.height) return '';
  const first = limitTop(top, room);
  return `lines ${first + 1}-${first + room.height} of ${room.count}`;
}

function movedTop(top: number, key: Key, { count, height }: ScrollRoom): number | undefined {
  const window = Math.max(1, height - 1);
  switch (key.name) {
    case 'up':
      return top - 1;
    case 'down':
      return top + 1;
    case 'page-up':
      return top - window;
    case 'page-down':
      return top + window;
    case 'home':
      return 0;
    case 'end':
      return count;
    default:
      return undefined;
  }
}
