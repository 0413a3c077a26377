import {
  formatBoardLength,
  formatLength,
  formatLengthExact,
} from '../../../measure/format-length.js';
import { formatMoney } from '../../../measure/money.js';
import type { Display, Mm } from '../../../measure/quantities.js';
import { isWorthKeeping } from '../../../plan/offcuts.js';
import { barLines } from '../../../text/bar-lines.js';
import type { Stretch } from '../../../text/board-bar.js';
import type { BarRow } from '../../../text/page.js';
import type { Wanted } from './boards-ask.js';
import type { CutUp } from './cut-up.js';

/** A terminal of 80 columns, with some room for one that wraps early. */
const COLUMNS = 78;

/** Every board to scale with its cuts in order; boards that are cut alike stand together. */
export function boardLines(
  boards: readonly CutUp[],
  {
    display,
    kerf,
    priced,
  }: { readonly display: Display; readonly kerf: Mm; readonly priced: boolean },
): readonly string[] {
  const groups: CutUp[][] = [];
  for (const board of boards) {
    const last = groups.at(-1);
    if (last !== undefined && alike(last[0], board)) last.push(board);
    else groups.push([board]);
  }
  return barLines(
    groups.map(group => row(group, { display, kerf, priced })),
    COLUMNS,
  );
}

function alike(a: CutUp | undefined, b: CutUp): boolean {
  return (
    a !== undefined &&
    a.board === b.board &&
    a.from === b.from &&
    a.cuts.map(({ name }) => name).join() === b.cuts.map(({ name }) => name).join()
  );
}

type Style = { readonly display: Display; readonly kerf: Mm; readonly priced: boolean };

function row(group: readonly CutUp[], { display, kerf, priced }: Style): BarRow {
  const [first] = group;
  const last = group.at(-1);
  if (first === undefined || last === undefined) throw new Error('no board in a group');
  const length = (value: Mm) => formatLength(value, display);
  const times = group.length > 1 ? `${group.length} x ` : '';
  const each = group.length > 1 ? ' each' : '';
  const source = first.onHand ? ' on hand' : priced ? ` at ${formatMoney(first.price)}` : '';
  const named = first.board.name === '' ? '' : `${first.board.name}, `;
  const stretch =
    first.from > 0 || first.to < first.board.length
      ? ` (${length(first.from)} to ${length(first.to)})`
      : '';
  const left = isWorthKeeping(first.offcut) ? 'offcut' : 'waste';
  return {
    name: group.length > 1 ? `${first.number}-${last.number}` : String(first.number),
    text: [
      `${named}${times}${formatBoardLength(first.board.length, display)}${source}${stretch}: ${cutWords(first.cuts, display)}`,
      `${left} ${length(first.offcut)}, slack ${length(first.slack)}${each}`,
    ].join('; '),
    bar: { length: first.board.length, stretches: stretchesOf(first, { display, kerf }) },
  };
}

/** Runs of equal pieces together, in the order of the cuts: `2 x A 34-1/2 in, 1 x B 21 in`. */
function cutWords(cuts: readonly Wanted[], display: Display): string {
  const runs: { piece: Wanted; count: number }[] = [];
  for (const piece of cuts) {
    const last = runs.at(-1);
    if (last?.piece === piece) last.count += 1;
    else runs.push({ piece, count: 1 });
  }
  return runs
    .map(
      ({ piece, count }) => `${count} x ${piece.name} ${formatLengthExact(piece.length, display)}`,
    )
    .join(', ');
}

function stretchesOf(
  { board, start, cuts, to, offcut }: CutUp,
  { display, kerf }: { readonly display: Display; readonly kerf: Mm },
): readonly Stretch[] {
  const plain = { labels: [] };
  const whole: Stretch = { kind: 'other', from: 0, to: board.length, ...plain };
  const defects: readonly Stretch[] =
    'defects' in board ? board.defects.map(it => ({ kind: 'lost' as const, ...it, ...plain })) : [];
  let at = start;
  const pieces = cuts.map(({ name, length }): Stretch => {
    const from = at;
    at += length + kerf;
    const labels = [`${name} ${formatLength(length, display)}`, name];
    return { kind: 'piece', from, to: from + length, labels };
  });
  const left: Stretch = { kind: 'left', from: to - offcut, to, ...plain };
  return [whole, ...defects, ...(offcut > 0 ? [left] : []), ...pieces];
}
