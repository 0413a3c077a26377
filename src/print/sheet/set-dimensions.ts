import type { DimensionLine } from '../../drawing/strokes.js';
import type { Mm } from '../../measure/quantities.js';
import { box, line, type Mark, type Point, words } from './mark.js';
import { points, type TypeRule } from './type.js';

type Side = DimensionLine['side'];

/** A dimension on paper: where it begins and ends along its side, its row, and its figure. */
export type SetDimension = {
  readonly line: DimensionLine;
  readonly row: number;
  readonly from: Mm;
  readonly to: Mm;
  /** Middle of the figure along the line. */
  readonly textAt: Mm;
};

export const DIMENSION_SIZE = 10;
/** From the wood to the first row, and from row to row: ISO 129-1 shows such distances (not re-checked). */
export const FIRST_ROW: Mm = 8;
const ROW: Mm = 6.5;
const PAD: Mm = 1.2;

/**
 * Gives each dimension a row in which it meets no other. A figure that has no room between the ends
 * of its line stands past one of them.
 */
export function placeOnPaper(
  dimensions: readonly DimensionLine[],
  along: (line: DimensionLine) => readonly [Mm, Mm],
  rule: TypeRule,
): readonly SetDimension[] {
  const placed: SetDimension[] = [];
  const reach = ({ from, to, textAt, line: { text, bright } }: SetDimension) => {
    const half = rule(text, DIMENSION_SIZE, bright) / 2 + PAD;
    return [Math.min(from, textAt - half), Math.max(to, textAt + half)] as const;
  };
  for (const one of dimensions.toSorted((a, b) => a.row - b.row)) {
    const [from, to] = along(one);
    const wide = rule(one.text, DIMENSION_SIZE, one.bright);
    const inside = wide + 2 * PAD <= to - from;
    // Beside an upright line it goes over the upper end: figures of level lines stand at the lower corner.
    const outside = one.along === 'u' ? to + PAD + wide / 2 : from - PAD - wide / 2;
    const textAt = inside ? (from + to) / 2 : outside;
    for (let row = one.row; ; row += 1) {
      const tried = { line: one, row, from, to, textAt };
      const [begins, ends] = reach(tried);
      const meets = placed.some(other => {
        const [otherBegins, otherEnds] = reach(other);
        const same = other.row === row && other.line.side === one.side;
        return same && begins < otherEnds - 0.01 && otherBegins < ends - 0.01;
      });
      if (!meets) {
        placed.push(tried);
        break;
      }
    }
  }
  return placed;
}

/** How far the rows on a side reach out from the wood. */
export function depthOf(placed: readonly SetDimension[], side: Side): Mm {
  const rows = placed.filter(({ line: { side: its } }) => its === side).map(({ row }) => row + 1);
  return rows.length === 0 ? 0 : FIRST_ROW + (Math.max(...rows) - 1) * ROW + points(DIMENSION_SIZE);
}

/** The rectangle that the wood fills on paper. */
export type Field = {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
};

/** How far figures of level lines stand out past the right end of the wood. */
export function rightOverhang(placed: readonly SetDimension[], end: Mm, rule: TypeRule): Mm {
  const over = placed
    .filter(({ line: { along } }) => along === 'u')
    .map(one => one.textAt + halfWidth(one, rule) - end);
  return Math.max(0, ...over);
}

/** How far figures of upright lines stand out over the top of the wood, which is at 0. */
export function topOverhang(placed: readonly SetDimension[], rule: TypeRule): Mm {
  const over = placed
    .filter(({ line: { along } }) => along === 'v')
    .map(one => halfWidth(one, rule) - one.textAt);
  return Math.max(0, ...over);
}

function halfWidth({ line: { text, bright } }: SetDimension, rule: TypeRule): Mm {
  return rule(text, DIMENSION_SIZE, bright) / 2;
}

const THIN: Mm = 0.18;

/** Extension lines of all dimensions and the lines themselves, then the figures: no line runs through one. */
export function dimensionMarks(
  placed: readonly SetDimension[],
  field: Field,
  rule: TypeRule,
): readonly Mark[] {
  const set = placed.map(one => oneDimension(one, field, rule));
  return [...set.flatMap(({ lines }) => lines), ...set.flatMap(({ figure }) => figure)];
}

/** Extension lines, the line itself with strokes across its ends, and the figure over it on white. */
function oneDimension(placed: SetDimension, field: Field, rule: TypeRule) {
  const { line: its, row, from, to, textAt } = placed;
  const out = FIRST_ROW + row * ROW;
  const level = its.along === 'u';
  const outward = its.side === 'above' || its.side === 'left' ? -1 : 1;
  const wood = { above: field.top, below: field.bottom, left: field.left, right: field.right };
  const edge = wood[its.side];
  const at = (along: Mm, off: Mm): Point => {
    const across = edge + outward * off;
    return level ? { x: along, y: across } : { x: across, y: along };
  };
  const reach = [Math.min(textAt, from), Math.max(textAt, to)] as const;
  const over = points(DIMENSION_SIZE) * 0.28;
  // The figure stands over its line, or left of an upright one, as it is read from the right.
  const base = at(textAt, out);
  const text = level ? { x: base.x, y: base.y - over } : { x: base.x - over, y: base.y };
  const wide = 2 * halfWidth(placed, rule);
  const lines: readonly Mark[] = [
    ...[from, to].map(end => line(at(end, 1.2), at(end, out + 1.2), THIN)),
    line(at(reach[0], out), at(reach[1], out), THIN),
    ...[from, to].map(end => tick(at(end, out))),
  ];
  const figure: readonly Mark[] = [
    whiteBehind(text, wide, level),
    words(text, its.text, DIMENSION_SIZE, {
      anchor: 'middle',
      bold: its.bright,
      upward: !level,
    }),
  ];
  return { lines, figure };
}

/** Where a figure stands, the lines of other dimensions give way. */
function whiteBehind({ x, y }: Point, wide: Mm, level: boolean): Mark {
  const high = points(DIMENSION_SIZE) * 0.76;
  return level
    ? box({ x: x - wide / 2, y: y - high }, { width: wide, height: high }, { fill: 1 })
    : box({ x: x - high, y: y - wide / 2 }, { width: high, height: wide }, { fill: 1 });
}

/** Oblique stroke of 45 degrees across the end, as ISO 129-1 allows beside arrowheads (not re-checked). */
function tick({ x, y }: Point): Mark {
  return line({ x: x - 1, y: y + 1 }, { x: x + 1, y: y - 1 }, 0.45);
}
