import type { Mm } from '../measure/quantities.js';

/** Two lines, by their numbers, that have to stay at least so many cells apart. */
export type Apart = {
  readonly from: number;
  readonly to: number;
  readonly least: number;
  /** Also as far apart as the scale says. */
  readonly scaled: boolean;
};

/** The lines of a drawing along one direction of the paper. */
export type Lines = {
  /** Positions in mm, rising, each once. */
  readonly at: readonly Mm[];
  /** Neighbors with a face or a gap between them. */
  readonly facing: readonly Apart[];
  /** Neighbors that a stroke leads from one to the other: an edge that would vanish if they met. */
  readonly joined: readonly Apart[];
  /** Both sides of a face that is to be filled. */
  readonly filled: readonly Apart[];
};

/** Lines with the distances that are kept now. */
type Spaced = { readonly at: readonly Mm[]; readonly apart: readonly Apart[] };

export type Fit = {
  /** Number of the cell of each line, rising from 0. */
  readonly cells: readonly number[];
  /** True when lines that face each other had to share a cell. */
  readonly merged: boolean;
};

/** A gap that no saw could have cut (1/8 in kerf is 3.2 mm) is shown only where it fills half a cell. */
const THIN: Mm = 4;
const HALF_CELL = 0.5;
/** Long stretches may shrink to this share of their scale before lines are merged to save room. */
const SHRINK = 0.35;
const SEARCHES = 20;

/** What is kept apart, the finest drawing first. */
function waysToSpace({ at, facing, joined, filled }: Lines): readonly Spaced[] {
  return [
    { at, apart: [...facing, ...joined, ...filled] },
    { at, apart: [...facing, ...filled] },
    { at, apart: facing },
  ];
}

/** The finest way that fits and its scale, in cells for each mm and no more than `most`. */
function bestWay(
  lines: Lines,
  cells: number,
  most: number,
): { way: Spaced; perMm: number } | undefined {
  for (const way of waysToSpace(lines)) {
    const perMm = largestScale(most, SHRINK, scale => cellsNeeded(way, scale, 0) <= cells);
    if (perMm !== undefined) return { way, perMm };
  }
  return undefined;
}

/** The largest scale, in cells for each mm and no more than `most`, at which no lines merge. */
export function scaleThatFits(lines: Lines, cells: number, most: number): number | undefined {
  return bestWay(lines, cells, most)?.perMm;
}

/**
 * Gives each line a cell: to scale where that is possible, thin boards widened to a cell or more of
 * their own. Only when the room is too small for that are the thinnest boards and gaps merged.
 */
export function fitLines(lines: Lines, cells: number, perMm: number): Fit {
  const best = bestWay(lines, cells, perMm);
  if (best !== undefined) return { cells: middle(best.way, best.perMm), merged: false };
  return { cells: mergedCells({ at: lines.at, apart: lines.facing }, cells), merged: true };
}

/** Halving search between a share of the scale and the whole of it. */
function largestScale(
  most: number,
  share: number,
  fits: (perMm: number) => boolean,
): number | undefined {
  if (fits(most)) return most;
  let low = most * share;
  if (!fits(low)) return undefined;
  let high = most;
  for (let i = 0; i < SEARCHES; i += 1) {
    const half = (low + high) / 2;
    if (fits(half)) low = half;
    else high = half;
  }
  return low;
}

/** Cells between two lines at a scale; `merge` is the length up to which lines may share a cell. */
function wanted(lines: Spaced, apart: Apart, scale: { perMm: number; merge: Mm }): number {
  const length = (lines.at[apart.to] ?? 0) - (lines.at[apart.from] ?? 0);
  const exact = length * scale.perMm;
  if (length <= scale.merge) return 0;
  if (length < THIN && exact < HALF_CELL) return 0;
  return apart.scaled ? Math.max(apart.least, Math.round(exact)) : apart.least;
}

/** Every line as far to the left as it can go. */
function leftmost(lines: Spaced, scale: { perMm: number; merge: Mm }): number[] {
  const cells = lines.at.map(() => 0);
  const arriving = byNumber(lines.apart, apart => apart.to, lines.at.length);
  for (let i = 0; i < cells.length; i += 1) {
    let cell = cells[i - 1] ?? 0;
    for (const apart of arriving[i] ?? []) {
      cell = Math.max(cell, (cells[apart.from] ?? 0) + wanted(lines, apart, scale));
    }
    cells[i] = cell;
  }
  return cells;
}

/** Every line as far to the right as it can go before the last one moves. */
function rightmost(lines: Spaced, scale: { perMm: number; merge: Mm }, last: number): number[] {
  const cells = lines.at.map(() => last);
  const leaving = byNumber(lines.apart, apart => apart.from, lines.at.length);
  for (let i = cells.length - 1; i >= 0; i -= 1) {
    let cell = cells[i + 1] ?? last;
    for (const apart of leaving[i] ?? []) {
      cell = Math.min(cell, (cells[apart.to] ?? last) - wanted(lines, apart, scale));
    }
    cells[i] = cell;
  }
  return cells;
}

function byNumber(
  all: readonly Apart[],
  numberOf: (apart: Apart) => number,
  count: number,
): Apart[][] {
  const lists: Apart[][] = Array.from({ length: count }, () => []);
  for (const apart of all) lists[numberOf(apart)]?.push(apart);
  return lists;
}

function cellsNeeded(lines: Spaced, perMm: number, merge: Mm): number {
  return (leftmost(lines, { perMm, merge }).at(-1) ?? 0) + 1;
}

/**
 * Halfway between leftmost and rightmost, rounded outward, so that a piece that is the same from both
 * ends looks so. No distance shrinks: two lines that round the same way stay as far apart as they
 * were, two that round away from each other part.
 */
function middle(lines: Spaced, perMm: number): number[] {
  const scale = { perMm, merge: 0 };
  const left = leftmost(lines, scale);
  const last = left.at(-1) ?? 0;
  const right = rightmost(lines, scale, last);
  return left.map((cell, i) => {
    const half = (cell + (right[i] ?? cell)) / 2;
    return half < last / 2 ? Math.floor(half) : Math.ceil(half);
  });
}

/** Near to scale over the whole room, the thickest boards that still have room kept apart. */
function mergedCells(lines: Spaced, cells: number): number[] {
  const first = lines.at[0] ?? 0;
  const extent = (lines.at.at(-1) ?? first) - first;
  const last = cells - 1;
  const perMm = extent > 0 ? last / extent : 0;
  const merge = shortestMerge(lines, cells);
  // Distances count only as "apart or not" here: the scale decides the rest.
  const scale = { perMm: 0, merge };
  const right = rightmost(lines, scale, last);
  const placed: number[] = [];
  const arriving = byNumber(lines.apart, apart => apart.to, lines.at.length);
  lines.at.forEach((at, i) => {
    let cell = Math.max(placed[i - 1] ?? 0, Math.round((at - first) * perMm));
    for (const apart of arriving[i] ?? []) {
      cell = Math.max(cell, (placed[apart.from] ?? 0) + wanted(lines, apart, scale));
    }
    placed.push(Math.min(cell, right[i] ?? cell));
  });
  return placed;
}

/** The shortest length such that the room suffices when all up to it may share cells. */
function shortestMerge(lines: Spaced, cells: number): Mm {
  const lengths = lines.apart.map(apart => (lines.at[apart.to] ?? 0) - (lines.at[apart.from] ?? 0));
  const rising = [...new Set(lengths)].sort((a, b) => a - b);
  let [low, high] = [0, rising.length];
  while (low < high) {
    const half = (low + high) >> 1;
    if (cellsNeeded(lines, 0, rising[half] ?? 0) <= cells) high = half;
    else low = half + 1;
  }
  return rising[low] ?? 0;
}
