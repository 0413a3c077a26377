import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import {
  type BoardBox,
  type BoardSize,
  boardSize,
  notchesInFrame,
  type Span,
} from './frame-of-board.js';
import { notchShape } from './notch-shape.js';
import type { Part } from './part.js';

/**
 * A text that is the same for pieces that are the same on the bench, however they are turned in the
 * piece: end for end, over, and on their other faces where the section is square. It differs for
 * another section, length or notch, and for the mirror image.
 */
export function signature(part: Part): string {
  return signatureOf(part, boxesOf(part));
}

/** The signature of the other hand. A piece that is its own mirror image has both the same. */
export function mirrorSignature(part: Part): string {
  const { along } = boardSize(part);
  const flipped = boxesOf(part).map(box => ({ ...box, along: flip(box.along, along) }));
  return signatureOf(part, flipped);
}

function boxesOf(part: Part): readonly BoardBox[] {
  return notchesInFrame(part).map(({ box }) => box);
}

function signatureOf(part: Part, notches: readonly BoardBox[]): string {
  const size = boardSize(part);
  const head = [part.section.name, part.section.family, hundredths(part.length)].join(' ');
  if (notches.length === 0) return head;
  const shapes = turned(notches, size).map(boxes => notchShape(boxes.map(inHundredths)));
  return `${head} ${shapes.sort()[0]}`;
}

/** The same board on the bench in each way that it can lie with its length the same way. */
function turned(boxes: readonly BoardBox[], size: BoardSize): readonly (readonly BoardBox[])[] {
  const over = boxes.map(box => ({
    along: box.along,
    across: flip(box.across, size.across),
    through: flip(box.through, size.through),
  }));
  const half = [boxes, over].flatMap(way => [way, endForEnd(way, size)]);
  if (!sameLength(size.across, size.through)) return half;
  return [...half, ...half.map(way => onEdge(way, size))];
}

function endForEnd(boxes: readonly BoardBox[], size: BoardSize): readonly BoardBox[] {
  return boxes.map(box => ({
    along: flip(box.along, size.along),
    across: flip(box.across, size.across),
    through: box.through,
  }));
}

/** A quarter turn about the length, for square sections. */
function onEdge(boxes: readonly BoardBox[], size: BoardSize): readonly BoardBox[] {
  return boxes.map(box => ({
    along: box.along,
    across: flip(box.through, size.through),
    through: box.across,
  }));
}

function flip(span: Span, whole: Mm): Span {
  return { from: whole - span.to, to: whole - span.from };
}

function inHundredths(box: BoardBox): BoardBox {
  const of = (span: Span) => ({ from: hundredths(span.from), to: hundredths(span.to) });
  return { along: of(box.along), across: of(box.across), through: of(box.through) };
}

/**
 * Whole hundredths of a mm; nobody cuts finer. The shift keeps binary fractions of an inch, such as
 * 1/32 in = 79.375 hundredths, away from where rounding turns.
 */
function hundredths(length: Mm): number {
  return Math.round(length * 100 + 0.137);
}
