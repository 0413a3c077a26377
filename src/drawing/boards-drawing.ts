import { formatBoardLength, formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import { groupAlike, isCutAlike, leftWords, sourceWords } from '../plan/board-bars.js';
import type { BoughtBoard, Purchase } from '../plan/plan.js';
import { outline } from './joint/faces-of-piece.js';
import { cornersOf, type PaperBox } from './sight.js';
import { BLANK, type Drawing, type Label, type Mark, type Patch } from './strokes.js';

/** A board as it is drawn: where its lower edge lies, and how it is to be sawn. */
type Bar = {
  readonly board: BoughtBoard;
  readonly numbers: string;
  readonly times: number;
  readonly low: Mm;
  readonly high: Mm;
};

/** Lengths are to scale; narrow boards are drawn so wide, in shares of the longest, that words have room. */
const LEAST_HIGH = 1 / 20;

/** Between two boards, in widths of one: room for a line of words over each. */
const AIR = 1;

/**
 * Every board of a section as a bar, its length to scale, boards that are cut alike once: the squaring cut at the left,
 * then the pieces in the order of the cuts with the blade between them, then what is left. What the
 * blade takes and what is too short to use is waste; an arrow shows how far the first cut may move in.
 */
export function drawBoards(purchase: Purchase, display: Display): Drawing {
  const longest = Math.max(0, ...purchase.boards.map(({ length }) => length));
  const height = Math.max(purchase.width.value, longest * LEAST_HIGH);
  const groups = groupAlike(purchase.boards, isCutAlike);
  const bars = groups.map(([board, ...others], at): Bar => {
    const low = (groups.length - 1 - at) * height * (1 + AIR);
    const last = others.at(-1);
    const numbers = last === undefined ? `${board.number}` : `${board.number}-${last.number}`;
    return { board, numbers, times: others.length + 1, low, high: low + height };
  });
  const saw = { kerf: purchase.kerf, trim: purchase.trim };
  const parts = bars.map(bar => drawBar(bar, saw, display));
  const strip = purchase.ripped === undefined ? '' : ', ripped strips';
  const title = `${purchase.section}${strip}, the cuts in order from the left`;
  return {
    ...BLANK,
    title,
    width: longest,
    height: Math.max(0, ...bars.map(({ high }) => high)) + height * AIR,
    strokes: parts.flatMap(it => it.strokes),
    patches: parts.flatMap(it => it.patches),
    marks: parts.flatMap(it => it.marks),
    labels: parts.flatMap(it => it.labels),
    notes: [
      `Dark lines are what the blade takes, ${formatLength(purchase.kerf, display)} each.`,
      ...shortWords(purchase, height, display),
    ],
    inWords: `${title}. ${parts.map(({ words }) => words).join(' ')}`,
  };
}

/** A piece so short that its length would not stand in it has its mark alone; by looking. */
function isShort(length: Mm, width: Mm): boolean {
  return lessThan(length, SHORT * width);
}

const SHORT = 2.5;

/** The lengths of pieces that have only their mark on the bars. */
function shortWords({ boards }: Purchase, height: Mm, display: Display): readonly string[] {
  const cuts = boards.flatMap(board => board.cuts).filter(it => isShort(it.length, height));
  const told = [...new Map(cuts.map(({ mark, length }) => [mark, length]))].map(
    ([mark, length]) => `${mark} is ${formatLength(length, display)}`,
  );
  return told.length === 0 ? [] : [`${told.join(', ')}.`];
}

type Saw = { readonly kerf: Mm; readonly trim: Mm };

function drawBar(bar: Bar, { kerf, trim }: Saw, display: Display) {
  const { board, numbers, times, low, high } = bar;
  const box = (from: Mm, to: Mm): PaperBox => ({ u: { from, to }, v: { from: low, to: high } });
  const pieces = piecesOf(board, trim + kerf, kerf);
  const blades = [trim, ...pieces.map(({ to }) => to)]
    .filter(from => from < board.length)
    .map(from => box(from, Math.min(board.length, from + kerf)));
  const waste = (face: PaperBox): Patch => ({
    part: `board ${numbers}`,
    corners: cornersOf(face),
    look: 'waste',
    lean: 'right',
  });
  const piecesText = pieces.map(({ mark, length }) => `${mark} ${formatLength(length, display)}`);
  const words = `${times > 1 ? `${times} x ` : ''}${formatBoardLength(board.length, display)}${sourceWords(board)}`;
  const left = leftWords(board, display);
  return {
    strokes: [
      ...outline(box(0, board.length), 'visible'),
      ...blades.flatMap(it => outline(it, 'visible')),
    ],
    patches: [...(trim > 0 ? [box(0, trim)] : []), ...blades].map(waste),
    marks: pieces.map(
      ({ from, to }, at): Mark => ({
        text: isShort(to - from, high - low) ? (pieces[at]?.mark ?? '') : (piecesText[at] ?? ''),
        part: `board ${numbers}`,
        on: { u: (from + to) / 2, v: (low + high) / 2 },
        room: { width: to - from, height: high - low },
        bright: false,
      }),
    ),
    labels: [
      {
        text: `Board ${numbers}: ${words}; ${left}`,
        at: { u: board.length / 2, v: high + (high - low) / 2 },
        bright: false,
      } satisfies Label,
    ],
    words: `Board ${numbers}, ${words}: ${piecesText.join(', ')}; ${left}.`,
  };
}

function piecesOf({ cuts }: BoughtBoard, start: Mm, kerf: Mm) {
  let at = start;
  return cuts.map(({ mark, length }) => {
    const from = at;
    at += length + kerf;
    return { mark, length, from, to: from + length };
  });
}
