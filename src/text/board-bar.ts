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
  const spans = spansOf(stretches, cell);
  for (const span of spans) {
    const { first, last } = span;
    cells.splice(first + 1, roomIn(span), ...inside(labelFor(span, spans), roomIn(span)));
    cells[first] = span.joined ? '┼' : '├';
    cells[last] = '┤';
  }
  return cells.join('').trimEnd();
}

/** The columns in which a piece begins and ends; joined to the piece before it when only a blade is between. */
type Span = {
  readonly first: number;
  readonly last: number;
  readonly joined: boolean;
  readonly labels: readonly string[];
};

function spansOf(stretches: readonly Stretch[], cell: Mm): readonly Span[] {
  const pieces = stretches.filter(({ kind }) => kind === 'piece');
  return pieces.map(({ from, to, labels }, at) => {
    const before = pieces[at - 1];
    const joined = before !== undefined && from - before.to < cell;
    const first = Math.round((joined ? before.to : from) / cell);
    return { first, last: Math.round(to / cell), joined, labels };
  });
}

function roomIn({ first, last }: Span): number {
  return Math.max(0, last - first - 1);
}

/** The first label that has room in every equal piece, so that equal pieces look alike. */
function labelFor({ labels }: Span, spans: readonly Span[]): string {
  const equal = spans.filter(span => span.labels.join() === labels.join());
  const room = Math.min(...equal.map(roomIn));
  return labels.find(label => textWidth(label) <= room) ?? '';
}

/** A label in the middle of the board's line. */
function inside(label: string, room: number): readonly string[] {
  const spaced = label !== '' && textWidth(label) + 2 <= room ? ` ${label} ` : label;
  const over = room - textWidth(spaced);
  return [
    ...FILL.piece.repeat(Math.floor(over / 2)),
    ...spaced,
    ...FILL.piece.repeat(Math.ceil(over / 2)),
  ];
}
