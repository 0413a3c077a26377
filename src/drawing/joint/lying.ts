import type { Mm } from '../../measure/quantities.js';
import { lessThan, sameLength } from '../../measure/tolerance.js';
import {
  type BoardBox,
  type BoardSize,
  boardSize,
  inBoardFrame,
} from '../../model/frame-of-board.js';
import type { Part } from '../../model/part.js';
import { cutNotches } from '../../model/solid.js';

/** A piece as it lies on the bench to be marked, its length from left to right. */
export type LyingPiece = {
  readonly size: BoardSize;
  readonly wood: readonly BoardBox[];
  /** From left to right. */
  readonly waste: readonly BoardBox[];
};

/**
 * A piece turned so that its notches open up or toward you, and lie at the left: only turned end for
 * end and over, never mirrored, so that a left hand stays a left hand.
 */
export function lyingPiece(part: Part): LyingPiece {
  const size = boardSize(part);
  const wood = part.solid.map(box => inBoardFrame(part, box));
  const waste = cutNotches(part.notches).map(({ box }) =>
    withinBlank(inBoardFrame(part, box), size),
  );
  const ways = TURNS.map(turn => ({
    size,
    wood: wood.map(box => turn(box, size)),
    waste: waste.map(box => turn(box, size)).sort((a, b) => a.along.from - b.along.from),
  }));
  return ways.reduce((best, way) => (lessThan(score(best), score(way)) ? way : best));
}

type Turn = (box: BoardBox, size: BoardSize) => BoardBox;

/** As it is; end for end; over; both. */
const TURNS: readonly Turn[] = [
  box => box,
  (box, size) => ({
    along: flip(box.along, size.along),
    across: flip(box.across, size.across),
    through: box.through,
  }),
  (box, size) => ({
    along: box.along,
    across: flip(box.across, size.across),
    through: flip(box.through, size.through),
  }),
  (box, size) => ({
    along: flip(box.along, size.along),
    across: box.across,
    through: flip(box.through, size.through),
  }),
];

type Span = BoardBox['along'];

function flip(span: Span, whole: Mm): Span {
  return { from: whole - span.to, to: whole - span.from };
}

/** A notch may be cut with more room than the board has there. */
function withinBlank({ along, across, through }: BoardBox, size: BoardSize): BoardBox {
  const within = (span: Span, whole: Mm) => ({
    from: Math.max(0, span.from),
    to: Math.min(whole, span.to),
  });
  return {
    along: within(along, size.along),
    across: within(across, size.across),
    through: within(through, size.through),
  };
}

/** Most for notches that open up, then toward you, then those at the left. */
function score({ size, waste }: LyingPiece): number {
  const count = (holds: (box: BoardBox) => boolean) => waste.filter(holds).length;
  const up = count(({ across }) => sameLength(across.to, size.across));
  const near = count(({ through }) => sameLength(through.to, size.through));
  const left = count(({ along }) => sameLength(along.from, 0));
  return up * 100 + near * 10 + left;
}
