import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import { onTheTape } from './on-tape.js';
import type { SquareRow } from './squares.js';

/** "18 in x 15 in", "18 in x 18 in from above". */
export function squareSize({ kind, long, wide }: SquareRow, display: Display): string {
  const sides = [long, wide].map(({ value }) => onTheTape(value, display)).join(' x ');
  return kind === 'box' ? `${sides} from above` : sides;
}

/** What a step looks at: "Both diagonals are about 23-7/16 in, within 1/16 in of each other." */
export function squareLines(rows: readonly SquareRow[], display: Display): readonly string[] {
  return rows.map(row => {
    const { diagonal, mayDiffer } = row;
    const aim = onTheTape(diagonal.value, display);
    const apart = formatLength(mayDiffer.value, display);
    const which = rows.length > 1 || row.kind === 'box' ? ` of ${squareSize(row, display)}` : '';
    const each = row.count > 1 && rows.length === 1 && row.kind === 'panel' ? ' of each' : '';
    return `Both diagonals${which}${each} are ${aim}, within ${apart} of each other.`;
  });
}
