import {
  type AreaMark,
  type LineMark,
  type Point,
  plainMarks,
  type Sheet,
  type WordsMark,
} from '../../src/print/sheet/mark.js';
import type { Paper } from '../../src/print/sheet/paper.js';
import type { TypeRule } from '../../src/print/sheet/type.js';

/** A cell of the grid that a sheet is laid on, in mm: about a letter of running words. */
const CELL = { width: 1.6, height: 3.9 };

type Grid = { readonly columns: number; readonly rows: number; readonly signs: string[] };

/**
 * A sheet of paper as lines of text that a person can read: words where they stand, lines and gray as signs,
 * and how much of each there is. It needs no reader of PDF, and shows what moves by a cell or comes and goes.
 */
export function sheetText({ title, marks }: Sheet, paper: Paper, rule: TypeRule): string {
  const columns = Math.round(paper.width / CELL.width);
  const rows = Math.round(paper.height / CELL.height);
  const grid: Grid = { columns, rows, signs: Array.from({ length: columns * rows }, () => ' ') };
  const plain = plainMarks(marks);
  const areas = plain.filter(mark => mark.kind === 'area');
  const lines = plain.filter(mark => mark.kind === 'line');
  const words = plain.filter(mark => mark.kind === 'words');
  for (const area of areas) setArea(grid, area);
  for (const line of lines) setLine(grid, line);
  for (const one of words) setWords(grid, one, rule);
  const text = Array.from({ length: rows }, (_, row) =>
    grid.signs
      .slice(row * columns, (row + 1) * columns)
      .join('')
      .trimEnd(),
  );
  const last = text.findLastIndex(line => line !== '');
  const count = `(${title}: ${words.length} words, ${lines.length} lines, ${areas.length} areas)`;
  return [...text.slice(0, last + 1), count].join('\n');
}

function cellOf({ x, y }: Point) {
  return { column: Math.floor(x / CELL.width), row: Math.floor(y / CELL.height) };
}

function set({ columns, rows, signs }: Grid, at: Point, sign: (before: string) => string): void {
  const { column, row } = cellOf(at);
  if (column < 0 || row < 0 || column >= columns || row >= rows) return;
  const cell = row * columns + column;
  signs[cell] = sign(signs[cell] ?? ' ');
}

/** Gray where something is added, nothing where white lies behind a figure, an outline otherwise. */
function setArea(grid: Grid, { corners, fill }: AreaMark): void {
  if (fill === 1) return;
  if (fill === undefined) {
    for (const [i, from] of corners.entries()) {
      const to = corners[(i + 1) % corners.length] ?? from;
      setLine(grid, { kind: 'line', from, to, thick: 0, dash: [] });
    }
    return;
  }
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  for (let y = Math.min(...ys); y <= Math.max(...ys); y += CELL.height / 2) {
    for (let x = Math.min(...xs); x <= Math.max(...xs); x += CELL.width / 2) {
      if (isInside(corners, { x, y })) set(grid, { x, y }, () => (fill === 0 ? '*' : '░'));
    }
  }
}

function isInside(corners: readonly Point[], { x, y }: Point): boolean {
  const sides = corners.map((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  });
  return sides.every(side => side >= 0) || sides.every(side => side <= 0);
}

function setLine(grid: Grid, { from, to, dash }: LineMark): void {
  const [wide, high] = [to.x - from.x, to.y - from.y];
  const [across, down] = [Math.abs(wide) / CELL.width, Math.abs(high) / CELL.height];
  const steps = Math.max(1, Math.ceil(2 * Math.max(across, down)));
  const sign = signOf(across, down, wide * high > 0, dash.length > 0);
  for (let step = 0; step <= steps; step += 1) {
    const share = step / steps;
    set(grid, { x: from.x + wide * share, y: from.y + high * share }, before => {
      const crosses = (sign === '|' && before === '-') || (sign === '-' && before === '|');
      return crosses || before === '+' ? '+' : sign;
    });
  }
}

function signOf(across: number, down: number, falls: boolean, dashed: boolean): string {
  if (dashed) return '·';
  if (down <= across / 4) return '-';
  if (across <= down / 4) return '|';
  return falls ? '\\' : '/';
}

/** Written upward on paper, level here, about its middle. */
function setWords(grid: Grid, { at, text, size, bold, anchor, upward }: WordsMark, rule: TypeRule) {
  const wide = rule(text, size, bold);
  const back = { start: 0, middle: wide / 2, end: wide }[anchor];
  const length = [...text].length * CELL.width;
  const start = upward ? at.x - length / 2 : at.x - back;
  const y = upward ? at.y : at.y - CELL.height / 4;
  for (const [i, sign] of [...text].entries()) {
    set(grid, { x: start + (i + 0.5) * CELL.width, y }, () => sign);
  }
}
