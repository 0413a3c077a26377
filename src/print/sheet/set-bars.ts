import type { Mm } from '../../measure/quantities.js';
import type { BoardBar, Stretch } from '../../text/board-bar.js';
import type { BarRow } from '../../text/page.js';
import { hatched } from './hatch.js';
import { box, line, type Mark, moved, words } from './mark.js';
import { beside, bound, type Piece, piece } from './piece.js';
import { type Measure, wordPieces } from './set-words.js';
import { SIZE, type TypeRule } from './type.js';

const HIGH: Mm = 10;
const NAME: Mm = 12;

/** Boards to scale, the longest as wide as there is room, each under the words that belong to it. */
export function barPieces(bars: readonly BarRow[], measure: Measure): readonly Piece[] {
  const longest = Math.max(...bars.map(({ bar }) => bar.length));
  const inner = { ...measure, width: measure.width - NAME };
  return bars.map(row => {
    const text = wordPieces(row.text, inner, { size: SIZE.table });
    const bar = piece(HIGH, barMarks(row.bar, inner.width / longest, measure.rule), { above: 0.8 });
    const name = bound(wordPieces(row.name, measure, { size: SIZE.heading, bold: true }));
    return { ...beside(name, bound([...text, bar]), NAME), above: 3.2 };
  });
}

/** A board lying there: pieces with their marks, saw cuts as thick lines, the rest hatched. */
function barMarks(bar: BoardBar, scale: number, rule: TypeRule): readonly Mark[] {
  const size = { width: bar.length * scale, height: HIGH };
  const inside = bar.stretches.flatMap(stretch =>
    moved(stretchMarks(stretch, scale, rule), { x: stretch.from * scale, y: 0 }),
  );
  return [...inside, box({ x: 0, y: 0 }, size, { edge: 0.35 })];
}

function stretchMarks(stretch: Stretch, scale: number, rule: TypeRule): readonly Mark[] {
  const width = (stretch.to - stretch.from) * scale;
  if (stretch.kind === 'other') return [];
  if (stretch.kind === 'piece') return pieceMarks(stretch.labels, width, rule);
  return hatched({ width, height: HIGH }, stretch.kind === 'left' ? 'one way' : 'both ways');
}

/** Mark and length in one line where there is room, else one over the other, else the mark alone. */
function pieceMarks(labels: readonly string[], width: Mm, rule: TypeRule): readonly Mark[] {
  const edges = [0, width].map(x => line({ x, y: 0 }, { x, y: HIGH }, 0.5));
  const [whole = '', mark = ''] = labels;
  const length = whole.slice(mark.length).trim();
  const x = width / 2;
  const fits = (text: string, size: number) => rule(text, size, true) + 1.2 <= width;
  const set = (text: string, size: number, y: Mm) =>
    words({ x, y }, text, size, { bold: true, anchor: 'middle' });
  if (fits(whole, SIZE.words)) return [...edges, set(whole, SIZE.words, HIGH * 0.65)];
  if (fits(length, SIZE.small) && length !== '')
    return [...edges, set(mark, SIZE.words, HIGH * 0.45), set(length, SIZE.small, HIGH * 0.88)];
  return fits(mark, SIZE.words) ? [...edges, set(mark, SIZE.words, HIGH * 0.65)] : edges;
}
