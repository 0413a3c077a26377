import type { Mm } from '../../measure/quantities.js';

/** A place on a sheet of paper: x to the right, y down, from its upper left corner. */
export type Point = { readonly x: Mm; readonly y: Mm };

/** From 0, black, to 1, white. Everything is told by lines and words too: gray only helps. */
export type Gray = number;

/** Height of type in points, 72 to the inch. */
export type Points = number;

export type LineMark = {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
  readonly thick: Mm;
  /** Lengths of strokes and gaps in turn; empty for a full line. */
  readonly dash: readonly Mm[];
};

export type AreaMark = {
  readonly kind: 'area';
  readonly corners: readonly Point[];
  readonly fill?: Gray;
  /** Thickness of its outline; none where it has no outline. */
  readonly edge?: Mm;
};

export type WordsMark = {
  readonly kind: 'words';
  /** Where the line of writing begins, ends or has its middle. */
  readonly at: Point;
  readonly text: string;
  readonly size: Points;
  readonly bold: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Written upward, to be read from the right side of the sheet. */
  readonly upward: boolean;
};

/** Marks that lie somewhere else than they say: moving them again and again costs nothing. */
export type MovedMarks = {
  readonly kind: 'moved';
  readonly by: Point;
  readonly marks: readonly Mark[];
};

/** What a writer sets. */
export type PlainMark = LineMark | AreaMark | WordsMark;

/** What is put on paper. Layout makes marks; a writer for each form (PDF, SVG) sets them. */
export type Mark = PlainMark | MovedMarks;

/** A sheet with what stands on it. */
export type Sheet = {
  /** What the sheet is about, for its foot. */
  readonly title: string;
  /** Where a reader's list of contents leads here. */
  readonly bookmark?: string;
  readonly marks: readonly Mark[];
};

const FULL: readonly Mm[] = [];

export function line(from: Point, to: Point, thick: Mm, dash: readonly Mm[] = FULL): LineMark {
  return { kind: 'line', from, to, thick, dash };
}

/** A rectangle with its upper left corner at `at`. */
export function box(
  at: Point,
  size: { readonly width: Mm; readonly height: Mm },
  look: { readonly fill?: Gray; readonly edge?: Mm },
): AreaMark {
  const [right, below] = [at.x + size.width, at.y + size.height];
  const corners = [at, { x: right, y: at.y }, { x: right, y: below }, { x: at.x, y: below }];
  return { kind: 'area', corners, ...look };
}

type WordsLook = Partial<Pick<WordsMark, 'bold' | 'anchor' | 'upward'>>;

export function words(at: Point, text: string, size: Points, look: WordsLook = {}): WordsMark {
  return { kind: 'words', at, text, size, bold: false, anchor: 'start', upward: false, ...look };
}

/** The same marks further right and down. */
export function moved(marks: readonly Mark[], by: Point): readonly Mark[] {
  return marks.length === 0 ? marks : [{ kind: 'moved', by, marks }];
}

/** All marks where they really lie. */
export function plainMarks(marks: readonly Mark[]): readonly PlainMark[] {
  const plain: PlainMark[] = [];
  gather(marks, { x: 0, y: 0 }, plain);
  return plain;
}

function gather(marks: readonly Mark[], { x, y }: Point, plain: PlainMark[]): void {
  const shift = (point: Point): Point => ({ x: point.x + x, y: point.y + y });
  for (const mark of marks) {
    if (mark.kind === 'moved') gather(mark.marks, shift(mark.by), plain);
    else if (mark.kind === 'words') plain.push({ ...mark, at: shift(mark.at) });
    else if (mark.kind === 'area') plain.push({ ...mark, corners: mark.corners.map(shift) });
    else plain.push({ ...mark, from: shift(mark.from), to: shift(mark.to) });
  }
}
