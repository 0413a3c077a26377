import { listWords } from '../text/list.js';

/** A board as the stops call it. */
export type NamedBoard = {
  /** `board 3`, `the rest of board 3`; empty where it is the only one. */
  readonly name: string;
  /** Only where its number is all that there is to say, so that several can be told in one go. */
  readonly number?: number;
};

/** Fewer in a row are told one by one. */
const SHORTEST_RUN = 3;

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
    const [first, ...others] = runs(numbers);
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

/** 3, 4, 5, 6, 8, 9 as `3 to 6`, `8`, `9`. */
function runs(numbers: readonly number[]): readonly string[] {
  const found: [number, ...number[]][] = [];
  for (const number of numbers) {
    const run = found.at(-1);
    if (run !== undefined && number === (run.at(-1) ?? 0) + 1) run.push(number);
    else found.push([number]);
  }
  return found.flatMap(run =>
    run.length < SHORTEST_RUN ? run.map(String) : [`${run[0]} to ${run.at(-1)}`],
  );
}
