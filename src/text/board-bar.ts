import type { Mm } from '../measure/quantities.js';
import { textWidth } from './width.js';

/** From here to there along a board: a piece, what is left, what is lost (knots, squaring), or neither. */
export type Stretch = {
  readonly kind: 'piece' | 'left' | 'lost' | 'other';
  readonly from: Mm;
  readonly to: Mm;
  /** What may stand inside, the fullest first; the first that has room is taken. */
  readonly labels: readonly string[];
};

/** A board seen from the side, its stretches in order from the end where the tape hooks. */
export type BoardBar = { readonly length: Mm; readonly stretches: readonly Stretch[] };

/** The longest board of all is `columns` wide; every other one in proportion. */
export type BarScale = { readonly longest: Mm; readonly columns: number };

const FILL = { piece: '─', left: '░', lost: '╳', other: '·' } as const;

/**
 * A board as one line to scale, a sign at each cut: two pieces of 1000 mm from 3000 mm in 31 columns are
 * `├─── A ───┼─── A ───┤░░░░░░░░░░`. A cut stands in the nearest column; the blade is too thin to show.
 */
export function boardBar({ length, stretches }: BoardBar, scale: BarScale): string {
  const cell = scale.longest / (scale.columns - 1);
  const column = (at: Mm) => Math.round(at / cell);
  const cells = Array.from({ length: column(length) + 1 }, () => ' ');
  for (const { kind, from, to } of stretches) cells.fill(FILL[kind], column(from), column(to) + 1);
  let end: Mm | undefined;
  for (const { from, to, labels } of stretches.filter(({ kind }) => kind === 'piece')) {
    const joined = end !== undefined && from - end < cell;
    const first = column(joined && end !== undefined ? end : from);
    const last = column(to);
    const room = Math.max(0, last - first - 1);
    cells.splice(first + 1, room, ...inside(labels, room));
    cells[first] = joined ? '┼' : '├';
    cells[last] = '┤';
    end = to;
  }
  return cells.join('').trimEnd();
}

/** The first label that has room, in the middle of the board's line. */
function inside(labels: readonly string[], room: number): readonly string[] {
  const label = labels.find(it => textWidth(it) <= room) ?? '';
  const spaced = label !== '' && textWidth(label) + 2 <= room ? ` ${label} ` : label;
  const over = room - textWidth(spaced);
  return [
    ...FILL.piece.repeat(Math.floor(over / 2)),
    ...spaced,
    ...FILL.piece.repeat(Math.ceil(over / 2)),
  ];
}
