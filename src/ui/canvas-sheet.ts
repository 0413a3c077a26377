/** A sheet of terminal cells that lines, fill and words are set on. Rows count downward from 0. */
export type Sheet = {
  readonly columns: number;
  readonly rows: number;
  /** Which of its four sides each cell's line reaches: NORTH, EAST, SOUTH, WEST added up. */
  readonly joins: Uint8Array;
  /** A set character; it wins over a line. Empty where nothing is set. */
  readonly signs: string[];
  readonly bright: Uint8Array;
};

export type CellLine = {
  readonly text: string;
  readonly bright: readonly (readonly [number, number])[];
};

export const NORTH = 1;
export const EAST = 2;
export const SOUTH = 4;
export const WEST = 8;

/** By the joins of a cell; a line that ends in a cell is drawn across it. */
const BOX_SIGNS = ' │─└││┌├─┘─┴┐┤┬┼';
const ASCII_SIGNS = ' |-+||++-+-+++++';

export function emptySheet(columns: number, rows: number): Sheet {
  const cells = columns * rows;
  return {
    columns,
    rows,
    joins: new Uint8Array(cells),
    signs: Array.from({ length: cells }, () => ''),
    bright: new Uint8Array(cells),
  };
}

/** Where a cell is kept, or undefined off the sheet. */
function cellAt(sheet: Sheet, column: number, row: number): number | undefined {
  if (column < 0 || row < 0 || column >= sheet.columns || row >= sheet.rows) return undefined;
  return row * sheet.columns + column;
}

/** A level line between two columns of a row, both included. */
export function drawLevel(
  sheet: Sheet,
  row: number,
  { from, to, bright }: { from: number; to: number; bright: boolean },
): void {
  for (let column = from; column <= to; column += 1) {
    const west = column > from ? WEST : 0;
    const east = column < to ? EAST : 0;
    addJoin(sheet, { column, row }, { joins: west | east, bright });
  }
}

/** An upright line between two rows of a column, both included. */
export function drawUpright(
  sheet: Sheet,
  column: number,
  { from, to, bright }: { from: number; to: number; bright: boolean },
): void {
  for (let row = from; row <= to; row += 1) {
    const north = row > from ? NORTH : 0;
    const south = row < to ? SOUTH : 0;
    addJoin(sheet, { column, row }, { joins: north | south, bright });
  }
}

type Place = { readonly column: number; readonly row: number };

/** Lets the line in a cell reach more of its sides; nothing happens off the sheet. */
export function addJoin(
  sheet: Sheet,
  { column, row }: Place,
  { joins, bright }: { joins: number; bright: boolean },
): void {
  const cell = cellAt(sheet, column, row);
  if (cell === undefined || joins === 0) return;
  sheet.joins[cell] = (sheet.joins[cell] ?? 0) | joins;
  if (bright) sheet.bright[cell] = 1;
}

/** True where neither a line nor a sign is set and the cell is on the sheet. */
export function isFree(sheet: Sheet, column: number, row: number): boolean {
  const cell = cellAt(sheet, column, row);
  return cell !== undefined && sheet.joins[cell] === 0 && sheet.signs[cell] === '';
}

/** The character that is set in a cell; empty for none, and off the sheet. */
export function signAt(sheet: Sheet, column: number, row: number): string {
  const cell = cellAt(sheet, column, row);
  return cell === undefined ? '' : (sheet.signs[cell] ?? '');
}

/** Sets one character in place of whatever line is there, bright unless said otherwise. */
export function setSign(sheet: Sheet, { column, row }: Place, sign: string, bright = true): void {
  const cell = cellAt(sheet, column, row);
  if (cell === undefined) return;
  sheet.signs[cell] = sign;
  sheet.bright[cell] = bright ? 1 : 0;
}

/** Sets a text from a cell to the right; what would fall off the sheet is left out. */
export function setText(
  sheet: Sheet,
  { column, row }: Place,
  { text, bright }: { text: string; bright: boolean },
): void {
  [...text].forEach((sign, i) => {
    const cell = cellAt(sheet, column + i, row);
    if (cell === undefined) return;
    sheet.signs[cell] = sign;
    sheet.bright[cell] = bright ? 1 : 0;
  });
}

/** The sheet as lines of text with runs of bright cells, `[from, to)`; blanks at the end are left out. */
export function sheetLines(sheet: Sheet, ascii: boolean): readonly CellLine[] {
  const joinSigns = ascii ? ASCII_SIGNS : BOX_SIGNS;
  return Array.from({ length: sheet.rows }, (_, row) => {
    const cells = Array.from(
      { length: sheet.columns },
      (_, column) => row * sheet.columns + column,
    );
    const text = cells
      .map(cell => sheet.signs[cell] || joinSigns[sheet.joins[cell] ?? 0] || ' ')
      .join('')
      .trimEnd();
    return {
      text,
      bright: brightRuns(cells.slice(0, text.length).map(c => sheet.bright[c] === 1)),
    };
  });
}

function brightRuns(isBright: readonly boolean[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  let from: number | undefined;
  [...isBright, false].forEach((bright, i) => {
    if (bright && from === undefined) from = i;
    if (!bright && from !== undefined) {
      runs.push([from, i]);
      from = undefined;
    }
  });
  return runs;
}
