import { LINE_LOOKS } from '../../drawing/line-kinds.js';
import type { Arrow, PaperPoint } from '../../drawing/strokes.js';
import type { Mm } from '../../measure/quantities.js';
import { line, type Mark, type Point, words } from './mark.js';
import { points, type TypeRule } from './type.js';

const THICK: Mm = 0.3;
const HEAD: Mm = 3;
const SIZE = 10;

/** The way a board goes is dash-dotted; a direction of the piece is a full line with its words behind the head. */
export function arrowMarks(
  arrow: Arrow,
  toPaper: (point: PaperPoint) => Point,
  told: boolean,
): readonly Mark[] {
  const [from, to] = [toPaper(arrow.from), toPaper(arrow.to)];
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [x, y] = [(to.x - from.x) / long, (to.y - from.y) / long];
  const head = Math.min(HEAD, long / 2);
  const back = { x: to.x - x * head, y: to.y - y * head };
  const wing = head / 3.2;
  const corners = [
    to,
    { x: back.x - y * wing, y: back.y + x * wing },
    { x: back.x + y * wing, y: back.y - x * wing },
  ];
  const dash = arrow.kind === 'goes' ? LINE_LOOKS.phantom.dashes.map(part => part * 0.2) : [];
  return [
    line(from, back, THICK, dash),
    { kind: 'area', corners, fill: 0 },
    ...(told && arrow.text !== '' ? [arrowWords(arrow.text, to, { x, y })] : []),
  ];
}

function arrowWords(text: string, to: Point, way: Point): Mark {
  const at = { x: to.x + way.x * 2, y: to.y + way.y * 2 + points(SIZE) * 0.36 };
  const anchor = way.x > 0.3 ? 'start' : way.x < -0.3 ? 'end' : 'middle';
  return words(at, text, SIZE, { anchor });
}

/** How large the wood is on paper, and at which scale. */
type Wood = { readonly width: Mm; readonly height: Mm; readonly scale: number };

/** Room that arrows and their words need beside the wood and over it; words only where they are told. */
export function arrowRoom(arrows: readonly Arrow[], wood: Wood, rule: TypeRule | undefined) {
  const room = { left: 0, right: 0, above: 0 };
  for (const { from, to, text } of arrows) {
    const wide = rule === undefined || text === '' ? 0 : rule(text, SIZE, false) + 3;
    const high = wide === 0 ? 0 : points(SIZE) + 3;
    const isLevel = Math.abs(to.u - from.u) > Math.abs(to.v - from.v) * LEVEL;
    const [left, right] = [Math.min(from.u, to.u), Math.max(from.u, to.u)];
    const ahead = isLevel && to.u < from.u ? wide : 0;
    const behind = isLevel && to.u > from.u ? wide : 0;
    const top = Math.max(from.v, to.v) * wood.scale + (isLevel ? 0 : high);
    room.left = Math.max(room.left, ahead - left * wood.scale);
    room.right = Math.max(room.right, right * wood.scale + behind - wood.width);
    room.above = Math.max(room.above, top - wood.height);
  }
  return room;
}

/** Flatter than this an arrow has its words before its head, steeper over it. */
const LEVEL = 0.3;
