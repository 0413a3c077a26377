import { textWidth } from './width.js';
import { cut, padEnd, padStart, wrap } from './wrap.js';

export type Column = {
  readonly title: string;
  readonly align?: 'left' | 'right';
  /** Gives way first when the page is narrow, and then wraps; the other columns are cut. */
  readonly grow?: boolean;
  /** Cells a growing column keeps before the others give way too; 12 unless said. */
  readonly least?: number;
};

/** The shortest rule that every reader of Markdown takes for one. */
const LEAST_RULE = 3;
const GAP = 2;
const LEAST = 12;
const LEAST_WORDS = 4;
const KEEP = Number.POSITIVE_INFINITY;

/**
 * A table as lines: the titles, a rule, the rows. Columns are as wide as their longest cell; when
 * that is wider than `width`, growing columns wrap, and if need be the others are cut with "...".
 */
export function tableLines(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string[] {
  const cells = rows.map(row => columns.map((_, i) => row[i] ?? ''));
  const titles = columns.map(({ title }) => title);
  const natural = columns.map((_, i) => widest([titles, ...cells].map(row => row[i] ?? '')));
  const widths = squeezed(columns, natural, width);
  const rule = widths.map(columnWidth => '─'.repeat(columnWidth));
  return [
    ...rowLines(columns, titles, widths),
    joined(rule),
    ...cells.flatMap(row => rowLines(columns, row, widths)),
  ].map(line => cut(line, width));
}

function widest(cells: readonly string[]): number {
  return Math.max(...cells.flatMap(cell => cell.split('\n')).map(textWidth));
}

/**
 * Column widths that fit: growing columns give way first, then all columns of words, and numbers
 * (to the right) last, since a number that is cut says nothing.
 */
function squeezed(columns: readonly Column[], natural: readonly number[], width: number): number[] {
  const room = width - GAP * (columns.length - 1);
  const growing = columns.map(({ grow, least }) => (grow === true ? (least ?? LEAST) : KEEP));
  const words = columns.map(({ align }) => (align === 'right' ? KEEP : LEAST_WORDS));
  const all = columns.map(() => 1);
  return [growing, words, all].reduce(
    (widths, floors) => narrowed(widths, floors, room),
    [...natural],
  );
}

/** Takes a cell from the widest column that is above its floor until all fit or none can give. */
function narrowed(widths: readonly number[], floors: readonly number[], room: number): number[] {
  const now = [...widths];
  let over = now.reduce((sum, columnWidth) => sum + columnWidth, 0) - room;
  while (over > 0) {
    const spare = now.map((columnWidth, i) => (columnWidth > (floors[i] ?? 0) ? columnWidth : 0));
    const most = Math.max(...spare);
    if (most === 0) return now;
    now[spare.indexOf(most)] = most - 1;
    over -= 1;
  }
  return now;
}

function rowLines(
  columns: readonly Column[],
  row: readonly string[],
  widths: readonly number[],
): string[] {
  const blocks = columns.map((column, i) => cellLines(row[i] ?? '', widths[i] ?? 0, column));
  const height = Math.max(...blocks.map(block => block.length));
  return Array.from({ length: height }, (_, line) =>
    joined(
      columns.map((column, i) => padded((blocks[i] ?? [])[line] ?? '', widths[i] ?? 0, column)),
    ),
  );
}

function padded(text: string, width: number, { align }: Column): string {
  return align === 'right' ? padStart(text, width) : padEnd(text, width);
}

function cellLines(cell: string, width: number, { grow }: Column): string[] {
  return grow === true ? wrap(cell, width) : cell.split('\n').map(line => cut(line, width));
}

function joined(cells: readonly string[]): string {
  return cells.join(' '.repeat(GAP)).trimEnd();
}

/**
 * A Markdown table, its columns padded so that the source reads as a table too. Characters that
 * mean something in Markdown or HTML are escaped, line breaks become spaces.
 */
export function markdownTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
): string {
  const titles = columns.map(({ title }) => markdownText(title));
  const cells = rows.map(row => columns.map((_, i) => markdownText(row[i] ?? '')));
  const widths = columns.map((_, i) =>
    Math.max(LEAST_RULE, widest([titles, ...cells].map(row => row[i] ?? ''))),
  );
  const line = (row: readonly string[]) =>
    row.map((cell, i) => padded(cell, widths[i] ?? 0, columns[i] ?? { title: '' }));
  const rule = columns.map(({ align }, i) => {
    const dashes = '-'.repeat(widths[i] ?? LEAST_RULE);
    return align === 'right' ? `${dashes.slice(1)}:` : dashes;
  });
  return [line(titles), rule, ...cells.map(line)].map(row => `| ${row.join(' | ')} |\n`).join('');
}

/** Text that Markdown shows as it is: `2x4 | *cedar*` becomes `2x4 \| \*cedar\*`. */
export function markdownText(text: string): string {
  return text.replace(/[\\|*_`[\]<]/g, '\\$&').replace(/\s*\n\s*/g, ' ');
}

/**
 * Rows as comma-separated values by RFC 4180: every record ends in CRLF; cells with a comma, a
 * quote, a line break or a space at an end stand in quotes, quotes inside doubled. A cell that a
 * spreadsheet would run as a formula (`=...`, `@...`, `+x`) gets an apostrophe in front, since a
 * project may come from a stranger; `-2-3/8 in` is left alone.
 */
export function csvText(titles: readonly string[], rows: readonly (readonly string[])[]): string {
  return [titles, ...rows].map(row => `${row.map(csvCell).join(',')}\r\n`).join('');
}

const SIGNED_NUMBER = /^[+-]\d[\d.,/ -]*(?: ?\p{L}{1,5}2?|%)?$/u;

function csvCell(cell: string): string {
  const formula = /^[=@+\-\t\r]/.test(cell) && !SIGNED_NUMBER.test(cell);
  const text = formula ? `'${cell}` : cell;
  return /[",\r\n]|^ | $/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
