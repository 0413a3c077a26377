import type { Mark as PartMark } from '../../drawing/strokes.js';
import type { Mm } from '../../measure/quantities.js';
import { line, type Mark, type Point, words } from './mark.js';
import type { Field } from './set-dimensions.js';
import { points, type TypeRule } from './type.js';

const SIZE = 10;
const SMALL = 8;

/** A name of a part on paper: where the part is seen, and the room that there is. */
type Name = {
  readonly mark: PartMark;
  readonly on: Point;
  readonly room: { width: Mm; height: Mm };
};

export type Names = {
  readonly inside: readonly Mark[];
  readonly beside: readonly PartMark[];
};

/** Names that have room on their part stand there, lengthwise or upward; the others go beside. */
export function namesInside(
  marks: readonly PartMark[],
  toPaper: (point: PartMark['on']) => Point,
  scale: number,
  rule: TypeRule,
): Names {
  const inside: Mark[] = [];
  const beside: PartMark[] = [];
  for (const mark of marks) {
    const room = { width: mark.room.width * scale, height: mark.room.height * scale };
    const set = insideMark({ mark, on: toPaper(mark.on), room }, rule);
    if (set === undefined) beside.push(mark);
    else inside.push(set);
  }
  return { inside, beside };
}

function insideMark({ mark, on, room }: Name, rule: TypeRule): Mark | undefined {
  for (const size of [SIZE, SMALL]) {
    const wide = rule(mark.text, size, mark.bright) + 1;
    const high = points(size);
    const down = high * 0.36;
    const look = { bold: mark.bright, anchor: 'middle' as const };
    if (wide <= room.width && high <= room.height)
      return words({ x: on.x, y: on.y + down }, mark.text, size, look);
    if (wide <= room.height && high <= room.width)
      return words({ x: on.x + down, y: on.y }, mark.text, size, { ...look, upward: true });
  }
  return undefined;
}

/** Width of a column of names beside the drawing. */
export function columnWidth(beside: readonly PartMark[], rule: TypeRule): Mm {
  const wide = beside.map(mark => rule(mark.text, SIZE, mark.bright));
  return beside.length === 0 ? 0 : Math.max(...wide) + LEADER;
}

const LEADER: Mm = 9;

/** Names in a column right of the drawing, each with a leader to its part; the leaders do not cross. */
export function besideMarks(
  beside: readonly PartMark[],
  toPaper: (point: PartMark['on']) => Point,
  field: Field,
  left: Mm,
): readonly Mark[] {
  const apart = points(SIZE) * 1.25;
  const sorted = beside
    .map(mark => ({ mark, on: toPaper(mark.on) }))
    .toSorted((a, b) => a.on.y - b.on.y);
  let y = field.top - apart;
  const low = field.bottom - (sorted.length - 1) * apart;
  return sorted.flatMap(({ mark, on }, at) => {
    const latest = low + at * apart;
    y = Math.max(y + apart, Math.min(on.y, Math.max(latest, field.top + at * apart)));
    return [
      line(on, { x: left + LEADER - 1.5, y }, 0.18),
      line({ x: on.x, y: on.y }, { x: on.x, y: on.y }, 0.9),
      words({ x: left + LEADER, y: y + points(SIZE) * 0.36 }, mark.text, SIZE, {
        bold: mark.bright,
      }),
    ];
  });
}
