import { parseMoney } from '../../../measure/money.js';
import { type Parsed, parsed, quoted, unreadable } from '../../../measure/parsed.js';
import type { Display } from '../../../measure/quantities.js';
import { nearestWord } from '../../../measure/suggest.js';
import { type CsvCell, csvRecords } from '../../../text/csv-records.js';
import { handFrom } from './board-text.js';
import type { ForSale, InHand, Lists, Wanted } from './boards-ask.js';
import { pieceName, sawLength, wholeCount } from './counted-text.js';

export type ReadLists =
  | { readonly ok: true; readonly lists: Lists }
  | { readonly ok: false; readonly problems: readonly string[] };

const COLUMNS = ['kind', 'length', 'count', 'price', 'name'] as const;
type Column = (typeof COLUMNS)[number];
/** Written by `--as csv` and of no use here. */
const PASSED_OVER = ['board', 'offcut', 'slack'];
const KINDS = ['piece', 'board', 'hand'];

/**
 * Pieces and boards from a CSV file with the columns kind, length, count, price and name in any order; count,
 * price and name may be left out. Every fault is told as `file:line:column`.
 */
export function listsFrom(file: string, text: string, system: Display['system']): ReadLists {
  const where = ({ line, column }: { line: number; column: number }) => `${file}:${line}:${column}`;
  const read = csvRecords(text);
  if (!read.ok) return { ok: false, problems: [`${where(read)}: ${read.problem}`] };
  const [titles, ...rows] = read.records;
  if (titles === undefined)
    return { ok: false, problems: [`${file}:1:1: There is nothing in it. Begin with ${EXAMPLE}`] };
  const columns = columnsOf(titles);
  if (!columns.ok)
    return { ok: false, problems: [`${where(columns.cell)}: ${columns.problem} ${EXAMPLE}`] };
  const lists: { pieces: Wanted[]; boards: ForSale[]; hands: InHand[] } = {
    pieces: [],
    boards: [],
    hands: [],
  };
  const problems: string[] = [];
  for (const row of rows) {
    const found = readRow(cellsOf(row, columns.names), {
      lists,
      system,
      width: titles.length,
      row,
    });
    if (found !== undefined) problems.push(`${where(found.cell)}: ${found.problem} ${found.hint}`);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, lists };
}

const EXAMPLE = `For example:\n  kind,length,count,price,name\n  piece,21 in,4,,seat slat\n  board,8 ft,,7.48,\n  hand,52 in,1,,`;

type Columns =
  | { readonly ok: true; readonly names: readonly string[] }
  | { readonly ok: false; readonly problem: string; readonly cell: CsvCell };

function columnsOf(titles: readonly CsvCell[]): Columns {
  const names = titles.map(({ text }) => text.toLowerCase());
  const known: readonly string[] = [...COLUMNS, ...PASSED_OVER];
  for (const [at, cell] of titles.entries()) {
    const name = names[at] ?? '';
    if (!known.includes(name)) {
      const near = nearestWord(name, COLUMNS);
      const help = near === undefined ? '' : ` Did you mean ${near}?`;
      return { ok: false, problem: `There is no column ${quoted(cell.text)}.${help}`, cell };
    }
    if (names.indexOf(name) !== at)
      return { ok: false, problem: `The column ${name} stands there twice.`, cell };
  }
  const [first] = titles;
  const lacking = ['kind', 'length'].find(name => !names.includes(name));
  if (lacking !== undefined && first !== undefined)
    return { ok: false, problem: `The column ${lacking} is missing.`, cell: first };
  return { ok: true, names };
}

type Cells = Readonly<Record<Column, CsvCell>>;

function cellsOf(row: readonly CsvCell[], names: readonly string[]): Cells {
  const [first] = row;
  const nowhere = { line: first?.line ?? 1, column: first?.column ?? 1 };
  const cell = (name: Column): CsvCell => row[names.indexOf(name)] ?? { text: '', ...nowhere };
  return {
    kind: cell('kind'),
    length: cell('length'),
    count: cell('count'),
    price: cell('price'),
    name: cell('name'),
  };
}

type Words = { readonly problem: string; readonly hint: string };
type Fault = Words & { readonly cell: CsvCell };

type RowAsk = {
  readonly lists: { pieces: Wanted[]; boards: ForSale[]; hands: InHand[] };
  readonly system: Display['system'];
  readonly width: number;
  readonly row: readonly CsvCell[];
};

/** Puts a row on its list; says what is wrong with it otherwise. */
function readRow(cells: Cells, { lists, system, width, row }: RowAsk): Fault | undefined {
  const extra = row[width];
  if (extra !== undefined && extra.text !== '')
    return {
      cell: extra,
      problem: 'The row has more cells than there are titles.',
      hint: 'Put quotes around a cell with a comma in it.',
    };
  const kind = cells.kind.text.toLowerCase();
  if (!KINDS.includes(kind)) return at(cells.kind, unknownKind(cells.kind.text));
  const count = optional(cells.count, wholeCount);
  if (!count.ok) return at(cells.count, count);
  const price = optional(cells.price, parseMoney);
  if (!price.ok) return at(cells.price, price);
  const name = optional(cells.name, pieceName);
  if (!name.ok) return at(cells.name, name);
  if (kind !== 'board' && price.value !== undefined)
    return at(cells.price, {
      problem: 'Only a board for sale has a price.',
      hint: 'Leave it empty.',
    });
  const told = { name: name.value ?? '' };
  if (kind === 'hand') {
    const hand = handIn(cells.length.text, system);
    if (!hand.ok) return at(cells.length, hand);
    lists.hands.push({ ...hand.value, ...told, count: count.value ?? 1 });
    return undefined;
  }
  const length = sawLength(cells.length.text, system);
  if (!length.ok) return at(cells.length, length);
  if (kind === 'piece')
    lists.pieces.push({ ...told, length: length.value, count: count.value ?? 1 });
  else
    lists.boards.push({
      ...told,
      length: length.value,
      ...(price.value === undefined ? {} : { price: price.value }),
      ...(count.value === undefined ? {} : { limit: count.value }),
    });
  return undefined;
}

function handIn(text: string, system: Display['system']): Parsed<InHand> {
  return /[*×=]/.test(text)
    ? unreadable(`${quoted(text)} is not a length.`, 'The number of boards stands under count.')
    : handFrom(text, system);
}

function optional<T>(cell: CsvCell, read: (text: string) => Parsed<T>): Parsed<T | undefined> {
  return cell.text === '' ? parsed(undefined) : read(cell.text);
}

function at(cell: CsvCell, { problem, hint }: Words): Fault {
  return { cell, problem, hint };
}

function unknownKind(text: string): Words {
  const near = nearestWord(text, KINDS);
  return {
    problem: `${quoted(text)} is no kind of row.`,
    hint: near === undefined ? `It can be ${KINDS.join(', ')}.` : `Did you mean ${near}?`,
  };
}
