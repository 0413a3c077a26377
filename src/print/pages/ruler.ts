import { inches } from '../../measure/inch.js';
import type { Mm } from '../../measure/quantities.js';
import { line, type Mark, words } from '../sheet/mark.js';
import { type Piece, piece } from '../sheet/piece.js';

const THICK: Mm = 0.25;
const LONG: Mm = 5;
const MIDDLE: Mm = 3.2;
const SHORT: Mm = 1.8;

/** Marks along a ruler: so many of them, so far apart, some of them longer. */
type Scale = {
  readonly at: { readonly x: Mm; readonly y: Mm };
  readonly step: Mm;
  readonly steps: number;
  readonly longEvery: number;
  readonly middleEvery: number;
  readonly text: string;
};

const INCHES: Omit<Scale, 'at'> = {
  step: inches(1 / 8),
  steps: 32,
  longEvery: 8,
  middleEvery: 4,
  text: '4 in',
};

const MILLIMETERS: Omit<Scale, 'at'> = {
  step: 2,
  steps: 50,
  longEvery: 5,
  middleEvery: 5,
  text: '100 mm',
};

const HEIGHT: Mm = 16;
/** Where words beside the rulers begin. */
const BESIDE: Mm = 120;

/**
 * A ruler of 4 in over one of 100 mm: a printer that fits pages to its paper is found out before
 * anything is marked.
 */
export function rulerPiece(): Piece {
  const note = ['Hold a tape to both rulers first.', 'Where they differ, print again', 'at 100 %.'];
  return piece(HEIGHT, [
    ...scaleMarks({ ...INCHES, at: { x: 0.2, y: 6 } }),
    ...scaleMarks({ ...MILLIMETERS, at: { x: 0.2, y: 14.5 } }),
    ...note.map((text, at) => words({ x: BESIDE, y: 5 + at * 4.6 }, text, 10)),
  ]);
}

function scaleMarks(scale: Scale): readonly Mark[] {
  const { at, step, steps, text } = scale;
  const ticks = Array.from({ length: steps + 1 }, (_, number) => {
    const x = at.x + number * step;
    return line({ x, y: at.y }, { x, y: at.y - highOf(scale, number) }, THICK);
  });
  const end = { x: at.x + steps * step, y: at.y };
  return [line(at, end, THICK), ...ticks, words({ x: end.x + 2, y: at.y }, text, 10)];
}

function highOf({ longEvery, middleEvery }: Scale, number: number): Mm {
  if (number % longEvery === 0) return LONG;
  return number % middleEvery === 0 ? MIDDLE : SHORT;
}
