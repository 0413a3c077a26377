import type { BoardBox, Span } from './frame-of-board.js';

type Way = keyof BoardBox;
const WAYS: readonly Way[] = ['along', 'across', 'through'];

/** The edges of all boxes along each way, in order, each once. */
type Lines = Readonly<Record<Way, readonly number[]>>;

/** One cell of the grid that the lines make, by the lines that it begins at, and whether wood is gone there. */
type Cell = Readonly<Record<Way, number>> & { readonly gone: boolean };

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
  const cells = cellsOf(boxes, lines);
  const kept = {
    along: linesThatMatter(cells, lines, 'along'),
    across: linesThatMatter(cells, lines, 'across'),
    through: linesThatMatter(cells, lines, 'through'),
  };
  const gone = cells
    .filter(cell => cell.gone && WAYS.every(way => kept[way].has(cell[way])))
    .map(cell => `${cell.along}.${cell.across}.${cell.through}`);
  return [...WAYS.map(way => [...kept[way]].join(',')), gone.join(' ')].join('|');
}

function edges(boxes: readonly BoardBox[], way: Way): readonly number[] {
  const all = boxes.flatMap(box => [box[way].from, box[way].to]);
  return [...new Set(all)].sort((a, b) => a - b);
}

function cellsOf(boxes: readonly BoardBox[], lines: Lines): readonly Cell[] {
  const cells: Cell[] = [];
  for (const along of lines.along) {
    const first = boxes.filter(box => within(box.along, along));
    for (const across of lines.across) {
      const second = first.filter(box => within(box.across, across));
      for (const through of lines.through) {
        const gone = second.some(box => within(box.through, through));
        cells.push({ along, across, through, gone });
      }
    }
  }
  return cells;
}

/** Lines with wood on one side only, somewhere along them; the others are inside a hole or a board. */
function linesThatMatter(cells: readonly Cell[], lines: Lines, way: Way): ReadonlySet<number> {
  const slices = new Map(lines[way].map(line => [line, '']));
  for (const cell of cells) {
    slices.set(cell[way], `${slices.get(cell[way])}${cell.gone ? 1 : 0}`);
  }
  const matter = new Set<number>();
  let before = '';
  for (const [line, slice] of slices) {
    if (slice !== before && (before !== '' || slice.includes('1'))) matter.add(line);
    before = slice;
  }
  return matter;
}

/** A cell begins at a line and ends at the next, so its first corner tells where it lies. */
function within(span: Span, line: number): boolean {
  return span.from <= line && line < span.to;
}
