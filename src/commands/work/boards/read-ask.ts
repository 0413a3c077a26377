import { formatLengthExact } from '../../../measure/format-length.js';
import type { Parsed } from '../../../measure/parsed.js';
import { sameLength } from '../../../measure/tolerance.js';
import { markAt } from '../../../plan/cut-list.js';
import { SQUARING_TRIM } from '../../../plan/setting.js';
import type { Given } from '../rule.js';
import { boardFrom, handFrom, pieceFrom } from './board-text.js';
import type { BoardsAsk, Lists, Wanted } from './boards-ask.js';
import { listsFrom } from './boards-file.js';

export type ReadAsk =
  | { readonly ok: true; readonly ask: BoardsAsk }
  | { readonly ok: false; readonly problems: readonly string[] };

/** What was asked on the line and in the file together, or everything that is wrong with it. */
export function readAsk(given: Given): ReadAsk {
  const { system } = given.display;
  const problems: string[] = [];
  const all = <T>(name: string, read: (text: string) => Parsed<T>): T[] =>
    given.words(name).flatMap(text => {
      const found = read(text);
      if (found.ok) return [found.value];
      problems.push(`--${name} ${text}: ${found.problem} ${found.hint}`);
      return [];
    });
  const typed: Lists = {
    pieces: all('piece', text => pieceFrom(text, system)),
    boards: all('board', text => boardFrom(text, system)),
    hands: all('on-hand', text => handFrom(text, system)),
  };
  const filed = fromFile(given);
  problems.push(...filed.problems);
  const lists = {
    pieces: [...typed.pieces, ...filed.lists.pieces],
    boards: [...typed.boards, ...filed.lists.boards],
    hands: [...typed.hands, ...filed.lists.hands],
  };
  if (problems.length === 0) problems.push(...askFaults(lists, given));
  if (problems.length > 0) return { ok: false, problems };
  const both = given.has('trim-both');
  const trim = both
    ? given.number('trim-both')
    : given.has('trim')
      ? given.number('trim')
      : SQUARING_TRIM;
  return {
    ok: true,
    ask: {
      ...lists,
      pieces: marked(lists.pieces),
      kerf: given.number('kerf'),
      trimStart: trim,
      trimEnd: both ? trim : 0,
    },
  };
}

const NO_LISTS: Lists = { pieces: [], boards: [], hands: [] };

function fromFile(given: Given): { readonly lists: Lists; readonly problems: readonly string[] } {
  if (!given.has('from')) return { lists: NO_LISTS, problems: [] };
  const file = given.word('from');
  const text = given.textOf(file);
  if (!text.ok) return { lists: NO_LISTS, problems: [`--from: ${text.problem} ${text.hint}`] };
  const read = listsFrom(file, text.value, given.display.system);
  return read.ok ? { ...read, problems: [] } : { lists: NO_LISTS, problems: read.problems };
}

/** More would keep a person sawing for weeks, and the search for minutes. */
const MOST_PIECES = 2000;
const MOST_LENGTHS = 100;

function askFaults({ pieces, boards, hands }: Lists, given: Given): readonly string[] {
  const faults: string[] = [];
  if (pieces.length === 0)
    faults.push('No pieces are given: write --piece 21in*4, or --from FILE.');
  if (boards.length + hands.length === 0)
    faults.push('No boards are given: write --board 8ft@7.48 or --on-hand 52in, or --from FILE.');
  if (given.has('trim') && given.has('trim-both'))
    faults.push('--trim squares one end and --trim-both both: write one of them.');
  const bare = boards.find(({ price }) => price === undefined);
  if (bare !== undefined && boards.some(({ price }) => price !== undefined))
    faults.push(
      `The board of ${formatLengthExact(bare.length, given.display)} has no price and others have: give a price for each, or for none.`,
    );
  if (given.has('spend') && boards.some(({ price }) => price === undefined))
    faults.push('--spend needs to know what boards cost: give each --board a price.');
  const twice = pieces.find(piece =>
    pieces.some(it => named(it, piece) && !sameLength(it.length, piece.length)),
  );
  if (twice !== undefined)
    faults.push(`Two lengths are called ${twice.name}: give each length a name of its own.`);
  if (pieces.reduce((sum, { count }) => sum + count, 0) > MOST_PIECES)
    faults.push(`That is more than ${MOST_PIECES} pieces: work out a part of them at a time.`);
  if (pieces.length > MOST_LENGTHS || boards.length + hands.length > MOST_LENGTHS)
    faults.push(`That is more than ${MOST_LENGTHS} lengths: work out a part of them at a time.`);
  return faults;
}

function named(a: Wanted, b: Wanted): boolean {
  return a.name !== '' && a.name === b.name;
}

/** Equal pieces together, longest first; those without a name are A, B and so on. */
function marked(pieces: readonly Wanted[]): readonly Wanted[] {
  const merged: Wanted[] = [];
  for (const piece of pieces) {
    const at = merged.findIndex(
      it => it.name === piece.name && sameLength(it.length, piece.length),
    );
    const same = merged[at];
    if (same === undefined) merged.push(piece);
    else merged[at] = { ...same, count: same.count + piece.count };
  }
  const taken = new Set(merged.map(({ name }) => name));
  let next = 0;
  const mark = (): string => {
    const free = markAt(next);
    next += 1;
    return taken.has(free) ? mark() : free;
  };
  return merged
    .sort((a, b) => b.length - a.length)
    .map(piece => (piece.name === '' ? { ...piece, name: mark() } : piece));
}
