import type { BoardBox, Span } from './frame-of-board.js';

type Way = keyof BoardBox;
const WAYS: readonly Way[] = ['along', 'across', 'through'];

/** A cell of the grid that all edges of the notches make, by its place along each way. */
type Cell = Readonly<Record<Way, number>>;

type Lines = Record<Way, readonly number[]>;

/**
 * The wood that is gone, written so that it does not matter in how many boxes it was taken away: two
 * notches that overlap or adjoin read like the one that they make. Spans are whole numbers.
 */
export function notchShape(boxes: readonly BoardBox[]): string {
  const lines: Lines = {
    along: edges(boxes, 'along'),
    across: edges(boxes, 'across'),
    through: edges(boxes, 'through'),
  };
  for (const way of WAYS) lines[way] = lines[way].filter(line => matters(boxes, lines, way, line));
  const gone = cells(lines).filter(cell => isGone(boxes, lines, cell));
  const words = WAYS.map(way => lines[way].join(','));
  return [...words, gone.map(cell => WAYS.map(way => cell[way]).join('.')).join(' ')].join('|');
}

function edges(boxes: readonly BoardBox[], way: Way): readonly number[] {
  const all = boxes.flatMap(box => [box[way].from, box[way].to]);
  return [...new Set(all)].sort((a, b) => a - b);
}

/** A line matters when somewhere along it there is wood on one side only. */
function matters(boxes: readonly BoardBox[], lines: Lines, way: Way, line: number): boolean {
  const at = lines[way].indexOf(line);
  return cells(lines).some(
    cell =>
      cell[way] === at &&
      isGone(boxes, lines, cell) !== isGone(boxes, lines, { ...cell, [way]: at - 1 }),
  );
}

function cells(lines: Lines): readonly Cell[] {
  return lines.along.flatMap((_, along) =>
    lines.across.flatMap((_, across) =>
      lines.through.map((_, through) => ({ along, across, through })),
    ),
  );
}

/** Looked up just past the lines that the cell begins at; edges are whole numbers, so that is inside. */
function isGone(boxes: readonly BoardBox[], lines: Lines, cell: Cell): boolean {
  return boxes.some(box => WAYS.every(way => within(box[way], lines[way][cell[way]])));
}

function within(span: Span, line: number | undefined): boolean {
  return line !== undefined && span.from <= line && line < span.to;
}
