import { listWords } from '../text/list.js';
import { runsOf } from '../text/runs.js';

/** A board as the stops call it. */
export type NamedBoard = {
  /** `board 3`, `the rest of board 3`; empty where it is the only one. */
  readonly name: string;
  /** Only where its number is all that there is to say, so that several can be told in one go. */
  readonly number?: number;
};

/** A whole board, by its number. */
export function numbered(number: number): NamedBoard {
  return { name: `board ${number}`, number };
}

/**
 * Boards in one go, in the order given, which is the order of sawing: `board 7`, `boards 3 to 6`,
 * `the rest of board 3, board 4 up to 40 in and board 5`.
 */
export function boardsNamed(boards: readonly NamedBoard[]): string {
  const words: string[] = [];
  for (let at = 0; at < boards.length; ) {
    const end = boards.findIndex((board, place) => place >= at && board.number === undefined);
    const numbers = boards
      .slice(at, end < 0 ? undefined : end)
      .flatMap(({ number }) => number ?? []);
    const [first, ...others] = runsOf(numbers);
    if (first !== undefined)
      words.push(`board${numbers.length > 1 ? 's' : ''} ${first}`, ...others);
    const other = boards[end];
    if (other !== undefined) words.push(other.name);
    at += numbers.length + 1;
  }
  return listWords(words);
}

/** Boards of which the same is told, together, in the order in which they come first: `8 and 9`, then `2`. */
export function groupedBy<T>(
  boards: readonly T[],
  said: (board: T) => string,
): readonly (readonly [string, readonly [T, ...T[]]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const board of boards) {
    const words = said(board);
    const group = groups.get(words);
    if (group === undefined) groups.set(words, [board]);
    else group.push(board);
  }
  return [...groups];
}
