import type { Mm } from '../../measure/quantities.js';
import type { Column } from '../../text/table.js';
import { line, type Mark, type Points, words } from './mark.js';
import { type Piece, piece } from './piece.js';
import { type Measure, TICK_BOX, tickBox } from './set-words.js';
import { ascent, leading, SIZE } from './type.js';
import { wrapType } from './wrap-type.js';

export type TableSet = {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** A box before each row, ticked or not; none where it is left out. */
  readonly ticks?: readonly boolean[];
  readonly size?: Points;
  /** Column that is set bold: what the eye looks for. */
  readonly strong?: number;
};

const GAP: Mm = 3.5;
const LEAST: Mm = 24;
const PAD: Mm = 0.9;
const TICK_COLUMN = TICK_BOX + 3;

/** A table as pieces: its titles, then a piece for each row; the titles come again on a new page. */
export function tablePieces(table: TableSet, measure: Measure): readonly Piece[] {
  if (table.rows.length === 0) return [];
  const { ticks, size = SIZE.table } = table;
  const left = ticks === undefined ? 0 : TICK_COLUMN;
  const set = { table, size, left, measure, widths: widthsOf(table, size, measure, left) };
  const titles = table.columns.map(({ title }) => title);
  const head = { ...rowPiece(titles, set, 'titles'), above: 2.5 };
  return [
    head,
    ...table.rows.map((row, at): Piece => {
      const tick = ticks === undefined ? [] : tickBox({ x: 0.3, y: PAD }, ticks[at] === true);
      const one = rowPiece(row, set, 'row');
      return { ...one, marks: [...tick, ...one.marks], head };
    }),
  ];
}

type Set = {
  readonly table: TableSet;
  readonly size: Points;
  readonly left: Mm;
  readonly measure: Measure;
  readonly widths: readonly Mm[];
};

function rowPiece(row: readonly string[], set: Set, as: 'titles' | 'row'): Piece {
  const { table, size, widths, measure } = set;
  const { rule } = measure;
  const isTitle = as === 'titles';
  let x = set.left;
  const marks: Mark[] = [];
  let lines = 1;
  for (const [at, { align }] of table.columns.entries()) {
    const width = widths[at] ?? 0;
    const bold = isTitle || table.strong === at;
    const text = wrapType(row[at] ?? '', width + 0.01, { rule, size, bold });
    lines = Math.max(lines, text.length);
    const anchor = align === 'right' ? 'end' : 'start';
    const from = align === 'right' ? x + width : x;
    for (const [n, one] of text.entries()) {
      if (one === '') continue;
      const y = PAD + ascent(size) + n * leading(size);
      marks.push(words({ x: from, y }, one, size, { bold, anchor }));
    }
    x += width + GAP;
  }
  const height = Math.max(lines * leading(size), isTitle ? 0 : TICK_BOX) + 2 * PAD;
  marks.push(line({ x: 0, y: height }, { x: measure.width, y: height }, isTitle ? 0.4 : 0.12));
  return piece(height, marks, { staysWithNext: isTitle });
}

/** Columns as wide as they need; where that is too much, growing ones give way first. */
function widthsOf(table: TableSet, size: Points, measure: Measure, left: Mm): readonly Mm[] {
  const { columns, rows, strong } = table;
  const natural = columns.map(({ title }, at) => {
    const cells = rows.flatMap(row => (row[at] ?? '').split('\n'));
    const bold = strong === at;
    const all = cells.map(cell => measure.rule(cell, size, bold));
    return Math.max(measure.rule(title, size, true), ...all);
  });
  const room = measure.width - left - GAP * (columns.length - 1);
  const floors = columns.map(({ grow, align }, at) => {
    if (grow === true) return LEAST;
    return align === 'right' ? (natural[at] ?? 0) : LEAST / 2;
  });
  const grown = squeezed(
    natural,
    floors.map((floor, at) => (columns[at]?.grow ? floor : (natural[at] ?? 0))),
    room,
  );
  return squeezed(grown, floors, room);
}

/** Takes what is too much from the widest columns, never below their floors. */
function squeezed(widths: readonly Mm[], floors: readonly Mm[], room: Mm): readonly Mm[] {
  const capped = (most: Mm) =>
    widths.map((width, at) => Math.min(width, Math.max(most, floors[at] ?? 0)));
  const sum = (all: readonly Mm[]) => all.reduce((total, width) => total + width, 0);
  if (sum(widths) <= room) return widths;
  let [low, high] = [0, Math.max(...widths)];
  for (let round = 0; round < ROUNDS; round += 1) {
    const middle = (low + high) / 2;
    if (sum(capped(middle)) > room) high = middle;
    else low = middle;
  }
  return capped(low);
}

/** Halvings of a column's width: far finer than a hair. */
const ROUNDS = 24;
