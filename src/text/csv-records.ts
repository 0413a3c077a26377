/** A cell and where it begins, counted from 1. */
export type CsvCell = { readonly text: string; readonly line: number; readonly column: number };

export type CsvRecords =
  | { readonly ok: true; readonly records: readonly (readonly CsvCell[])[] }
  | {
      readonly ok: false;
      readonly problem: string;
      readonly line: number;
      readonly column: number;
    };

/**
 * The records of a text of comma-separated values (RFC 4180), each cell without the spaces around it.
 * Where the first line has semicolons and no comma, as spreadsheets write in countries with a decimal
 * comma, cells end at semicolons. Empty lines and lines that begin with # are left out.
 */
export function csvRecords(text: string): CsvRecords {
  const plain = text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const [first = ''] = plain.split('\n', 1);
  const mark = first.includes(';') && !first.includes(',') ? ';' : ',';
  const records: CsvCell[][] = [];
  let at: Place = { index: 0, line: 1, start: 0 };
  while (at.index < plain.length) {
    const read = oneRecord(plain, at, mark);
    if (!read.ok) return read;
    const { cells, after } = read;
    const comment = plain[at.index] === '#';
    if (!comment && cells.some(({ text: cell }) => cell !== '')) records.push(cells);
    at = comment ? nextLine(plain, at) : after;
  }
  return { ok: true, records };
}

/** Where the reader stands: the sign, its line, and the sign that the line begins with. */
type Place = { readonly index: number; readonly line: number; readonly start: number };

function nextLine(text: string, at: Place): Place {
  const end = text.indexOf('\n', at.index);
  const index = end < 0 ? text.length : end + 1;
  return { index, line: at.line + 1, start: index };
}

type OneRecord =
  | { readonly ok: true; readonly cells: CsvCell[]; readonly after: Place }
  | Extract<CsvRecords, { ok: false }>;

function oneRecord(text: string, from: Place, mark: string): OneRecord {
  if (text[from.index] === '#') return { ok: true, cells: [], after: from };
  const cells: CsvCell[] = [];
  let at = from;
  for (;;) {
    const read = oneCell(text, at, mark);
    if (!read.ok) return read;
    cells.push(read.cell);
    at = read.after;
    const sign = text[at.index];
    if (sign !== mark) {
      const index = Math.min(text.length, at.index + 1);
      return { ok: true, cells, after: { index, line: at.line + 1, start: index } };
    }
    at = { ...at, index: at.index + 1 };
  }
}

type OneCell =
  | { readonly ok: true; readonly cell: CsvCell; readonly after: Place }
  | Extract<CsvRecords, { ok: false }>;

function oneCell(text: string, at: Place, mark: string): OneCell {
  let { index } = at;
  while (text[index] === ' ' || text[index] === '\t') index += 1;
  if (text[index] === '"') return quotedCell(text, { ...at, index }, mark);
  let end = index;
  while (end < text.length && text[end] !== mark && text[end] !== '\n') end += 1;
  const cell = { text: text.slice(index, end).trim(), ...placeOf({ ...at, index }) };
  return { ok: true, cell, after: { ...at, index: end } };
}

function quotedCell(text: string, at: Place, mark: string): OneCell {
  const found = /^"((?:[^"]|"")*)"[ \t]*/.exec(text.slice(at.index));
  if (found === null)
    return { ok: false, problem: 'A quote is opened here and never closed.', ...placeOf(at) };
  const [whole = '', inside = ''] = found;
  const lines = whole.split('\n').length - 1;
  const start = lines === 0 ? at.start : at.index + whole.lastIndexOf('\n') + 1;
  const after = { index: at.index + whole.length, line: at.line + lines, start };
  const sign = text[after.index];
  if (sign !== undefined && sign !== mark && sign !== '\n')
    return {
      ok: false,
      problem: `Behind the closing quote a ${mark === ',' ? 'comma' : 'semicolon'} should stand.`,
      ...placeOf(after),
    };
  return { ok: true, cell: { text: inside.replaceAll('""', '"').trim(), ...placeOf(at) }, after };
}

function placeOf({ index, line, start }: Place): { line: number; column: number } {
  return { line, column: index - start + 1 };
}
