import { formatBoardLength, formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { lessThan } from '../measure/tolerance.js';
import type { Stretch } from '../text/board-bar.js';
import type { BarRow } from '../text/page.js';
import { isWorthKeeping } from './offcuts.js';
import type { BoughtBoard, Purchase } from './plan.js';

type Cut = { readonly mark: string; readonly length: Mm };

type Saw = { readonly start: Mm; readonly kerf: Mm; readonly display: Display };

/** Where pieces begin and end along a board, from where the first begins, a blade between each two. */
export function alongBoard<C extends { readonly length: Mm }>(
  cuts: readonly C[],
  { start, kerf }: Pick<Saw, 'start' | 'kerf'>,
): readonly { readonly cut: C; readonly from: Mm; readonly to: Mm }[] {
  let at = start;
  return cuts.map(cut => {
    const from = at;
    const to = from + cut.length;
    at = to + kerf;
    return { cut, from, to };
  });
}

/** The same as stretches of a drawing. */
export function pieceStretches(cuts: readonly Cut[], saw: Saw): readonly Stretch[] {
  return alongBoard(cuts, saw).map(({ cut: { mark, length }, from, to }): Stretch => {
    const labels = [`${mark} ${formatLength(length, saw.display)}`, mark];
    return { kind: 'piece', from, to, labels };
  });
}

/** What is left at the far end, once the last cut has parted it. */
export function offcutStretch(offcut: Mm, end: Mm): readonly Stretch[] {
  return offcut > 0 ? [{ kind: 'left', from: end - offcut, to: end, labels: [] }] : [];
}

/** Runs of equal pieces together, in the order of the cuts: `4 x C 18 in, 2 x E 11-1/2 in`. */
export function runWords(cuts: readonly Cut[], length: (value: number) => string): string {
  const runs: { mark: string; length: number; count: number }[] = [];
  for (const cut of cuts) {
    const last = runs.at(-1);
    if (last && last.mark === cut.mark) last.count += 1;
    else runs.push({ ...cut, count: 1 });
  }
  return runs.map(run => `${run.count} x ${run.mark} ${length(run.length)}`).join(', ');
}

/** `offcut 23-3/8 in, slack 23-1/2 in`; `waste 2 in` where it is too short to keep. Both down to a mark on the tape. */
export function leftWords(
  { offcut, slack }: { readonly offcut: Mm; readonly slack: Mm },
  display: Display,
): string {
  const mark = (length: Mm) => formatLength(snapDown(length, display.grid), display);
  const left = `${isWorthKeeping(offcut) ? 'offcut' : 'waste'} ${mark(offcut)}`;
  const free = lessThan(slack, display.grid) ? 'no slack' : `slack ${mark(slack)}`;
  return `${lessThan(offcut, display.grid) ? 'no waste' : left}, ${free}`;
}

/** Neighbors that are the same board in the same way, together. */
export function groupAlike<T>(
  boards: readonly T[],
  isAlike: (a: T, b: T) => boolean,
): readonly (readonly [T, ...T[]])[] {
  const groups: [T, ...T[]][] = [];
  for (const board of boards) {
    const last = groups.at(-1);
    if (last !== undefined && isAlike(last[0], board)) last.push(board);
    else groups.push([board]);
  }
  return groups;
}

/** The boards of a section to scale, boards that are cut alike in one row. */
export function boardBars(purchase: Purchase, display: Display): readonly BarRow[] {
  return groupAlike(purchase.boards, isCutAlike).map(([board, ...others]): BarRow => {
    const last = others.at(-1) ?? board;
    const times = others.length > 0 ? `${others.length + 1} x ` : '';
    const each = others.length > 0 ? ' each' : '';
    const strip = purchase.ripped !== undefined && !board.onHand ? ' strip' : '';
    const have = sourceWords(board);
    const cuts = runWords(board.cuts, value => formatLength(value, display));
    const { kerf, trim } = purchase;
    return {
      name: others.length > 0 ? `${board.number}-${last.number}` : String(board.number),
      text: `${times}${formatBoardLength(board.length, display)}${strip}${have}: ${cuts}; ${leftWords(board, display)}${each}`,
      bar: {
        length: board.length,
        stretches: [
          ...offcutStretch(board.offcut, board.length),
          ...pieceStretches(board.cuts, { start: trim + kerf, kerf, display }),
        ],
      },
    };
  });
}

/** Behind the length of a board that is not bought with the others: ` (have)`, ` (besides)`. */
export function sourceWords({ onHand, besides }: BoughtBoard): string {
  if (besides !== undefined) return ' (besides)';
  return onHand ? ' (have)' : '';
}

/** Boards of one length and one source that give the same pieces in the same order. */
export function isCutAlike(a: BoughtBoard, b: BoughtBoard): boolean {
  const marks = ({ cuts }: BoughtBoard) => cuts.map(({ mark }) => mark).join();
  return a.length === b.length && sourceWords(a) === sourceWords(b) && marks(a) === marks(b);
}
