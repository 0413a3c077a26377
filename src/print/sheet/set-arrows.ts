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

/** Room that the words of arrows need beside the wood. */
export function arrowWidth(arrows: readonly Arrow[], side: 'left' | 'right', rule: TypeRule): Mm {
  const wide = arrows
    .filter(({ text }) => text !== '')
    .filter(({ from, to }) => (side === 'right' ? to.u > from.u : to.u < from.u))
    .map(({ text }) => rule(text, SIZE, false) + 3);
  return Math.max(0, ...wide);
}
