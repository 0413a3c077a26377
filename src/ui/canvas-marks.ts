import type { Mark } from '../drawing/strokes.js';
import { isFree, type Sheet, setSign, setText, signAt } from './canvas-sheet.js';

export type CellAt = { readonly column: number; readonly row: number };

/** The cells that were filled for each part, by part id. */
export type Filled = Map<string, CellAt[]>;

export function addFilled(filled: Filled, part: string, cell: CellAt): void {
  const cells = filled.get(part);
  if (cells === undefined) filled.set(part, [cell]);
  else cells.push(cell);
}

/** Signs of a leader, and of its end on the part: others than those of edges, so that nobody takes it for wood. */
const LEADER = {
  unicode: { level: '-', upright: '¦', end: '●' },
  ascii: { level: '=', upright: '!', end: 'o' },
} as const;

/** A leader that passes behind more lines than this is lost among them; found by looking. */
const MOST_CROSSED = 20;

export type MarkSetting = {
  readonly filled: Filled;
  /** The sign that parts are filled with. */
  readonly fill: string;
  readonly ascii: boolean;
  /** The cell of a place where a part is seen. */
  readonly cellOf: (mark: Mark) => CellAt;
};

/**
 * Names of parts, each where nobody can mistake it: in brackets on its filled part, bare in a part that is
 * narrower, else in brackets beside the wood with a leader whose end lies on the part. Names cover nothing but
 * the fill of their own part and free cells. One that finds no such place is left out.
 */
export function placeMarks(sheet: Sheet, marks: readonly Mark[], setting: MarkSetting): void {
  const names = marks.filter(({ bright }) => bright);
  const beside = names.filter(mark => !setInside(sheet, mark, setting));
  for (const mark of beside) setBeside(sheet, mark, setting);
}

function setInside(sheet: Sheet, { text, part, bright }: Mark, setting: MarkSetting): boolean {
  const own = ownCells(sheet, part, setting);
  for (const label of [`[${text}]`, text]) {
    const at = middleRun(own, label.length);
    if (at === undefined) continue;
    setText(sheet, at, { text: label, bright });
    return true;
  }
  return false;
}

/** What still shows the fill of a part: arrows may lie over it. */
function ownCells(sheet: Sheet, part: string, { filled, fill }: MarkSetting): readonly CellAt[] {
  return (filled.get(part) ?? []).filter(({ column, row }) => signAt(sheet, column, row) === fill);
}

/** Where so many cells side by side begin, as near the middle of all as can be. */
function middleRun(cells: readonly CellAt[], length: number): CellAt | undefined {
  const taken = new Set(cells.map(keyOf));
  const mean = (of: (cell: CellAt) => number) =>
    cells.reduce((sum, cell) => sum + of(cell), 0) / Math.max(1, cells.length);
  const middle = { column: mean(({ column }) => column), row: mean(({ row }) => row) };
  const off = ({ column, row }: CellAt) =>
    Math.abs(column + (length - 1) / 2 - middle.column) + 2 * Math.abs(row - middle.row);
  const runs = cells.filter(({ column, row }) =>
    Array.from({ length }, (_, i) => keyOf({ column: column + i, row })).every(it => taken.has(it)),
  );
  return runs.reduce<CellAt | undefined>(
    (best, run) => (best === undefined || off(run) < off(best) ? run : best),
    undefined,
  );
}

function keyOf({ column, row }: CellAt): string {
  return `${column} ${row}`;
}

/** A leader: the free cells that it is drawn in, and where the label begins. */
type Leader = {
  readonly end: CellAt;
  readonly cells: readonly CellAt[];
  readonly label: CellAt;
  readonly upright: boolean;
  readonly cost: number;
};

type Way = { readonly across: number; readonly down: number };

const WAYS: readonly Way[] = [
  { across: 1, down: 0 },
  { across: -1, down: 0 },
  { across: 0, down: -1 },
  { across: 0, down: 1 },
];

function setBeside(sheet: Sheet, mark: Mark, setting: MarkSetting): void {
  const own = ownCells(sheet, mark.part, setting);
  const starts = own.length > 0 ? own : [setting.cellOf(mark)];
  const label = `[${mark.text}]`;
  const found = starts.flatMap(end => WAYS.flatMap(way => leaderTo(sheet, end, way, label) ?? []));
  const [first, ...others] = found;
  if (first === undefined) return;
  const best = others.reduce((least, one) => (one.cost < least.cost ? one : least), first);
  const signs = LEADER[setting.ascii ? 'ascii' : 'unicode'];
  for (const cell of best.cells) {
    setSign(sheet, cell, best.upright ? signs.upright : signs.level, mark.bright);
  }
  setSign(sheet, best.end, signs.end, mark.bright);
  setText(sheet, best.label, { text: label, bright: mark.bright });
}

/** The shortest leader one way, behind as few lines as it can, to where the label has air all round. */
function leaderTo(
  sheet: Sheet,
  end: CellAt,
  { across, down }: Way,
  label: string,
): Leader | undefined {
  const cells: CellAt[] = [];
  let crossed = 0;
  for (let step = 1; crossed <= MOST_CROSSED; step += 1) {
    const cell = { column: end.column + across * step, row: end.row + down * step };
    if (cell.column < 0 || cell.row < 0) return undefined;
    if (cell.column >= sheet.columns || cell.row >= sheet.rows) return undefined;
    if (!isFree(sheet, cell.column, cell.row)) {
      crossed += 1;
      continue;
    }
    const at = labelAt(cell, { across, down }, label);
    if (cells.length > 0 && hasAir(sheet, at, label.length)) {
      const cost = crossed * CROSSING + cells.length + (down === 0 ? 0 : UPRIGHT);
      return { end, cells, label: at, upright: down !== 0, cost };
    }
    cells.push(cell);
  }
  return undefined;
}

/** A line passed behind is as bad as so many cells; an upright leader is harder to follow. */
const CROSSING = 6;
const UPRIGHT = 3;

/** Where a label begins whose leader has come to a cell. */
function labelAt(cell: CellAt, { across, down }: Way, label: string): CellAt {
  if (down !== 0) return { column: cell.column - Math.floor(label.length / 2), row: cell.row };
  return { column: across > 0 ? cell.column : cell.column - label.length + 1, row: cell.row };
}

/** Free cells for a label and one at either end, on the sheet. */
function hasAir(sheet: Sheet, { column, row }: CellAt, length: number): boolean {
  if (column < 0 || column + length > sheet.columns) return false;
  for (let at = column; at < column + length; at += 1) {
    if (!isFree(sheet, at, row)) return false;
  }
  const ends = [column - 1, column + length];
  return ends.every(at => at < 0 || at >= sheet.columns || !isLetter(signAt(sheet, at, row)));
}

function isLetter(sign: string): boolean {
  return /[\p{L}\p{N}\]]/u.test(sign);
}
