import type { Mm } from '../measure/quantities.js';
import { atMost, sameLength } from '../measure/tolerance.js';
import { boardSize, inBoardFrame, type Span } from './frame-of-board.js';
import type { Notch, Part } from './part.js';

/** A notch as it is marked and cut on the bench; lengths in mm. */
export type NotchCut = {
  /** From the nearer end of the board to the near shoulder; 0 where it is cut from the end in. */
  readonly fromEnd: Mm;
  readonly along: Mm;
  readonly depth: Mm;
  /** Wood left beside it: the tongue. */
  readonly left: Mm;
  /** `edge`: through the whole thickness; `face`: across the whole width; `corner`: neither. */
  readonly into: 'edge' | 'face' | 'corner';
};

/**
 * What a notch takes. A 2x4 rail that lies over the end of a 2x4 post: 0 from the end, 3-1/2 in along,
 * 1-3/4 in deep into the edge, 1-3/4 in left.
 */
export function notchCut(part: Part, notch: Notch): NotchCut {
  const size = boardSize(part);
  const box = inBoardFrame(part, notch.box);
  const allThrough = sameLength(long(box.through), size.through);
  const allAcross = sameLength(long(box.across), size.across);
  const intoFace = allAcross && !allThrough;
  const depth = intoFace ? long(box.through) : long(box.across);
  const before = Math.max(0, box.along.from);
  const after = Math.max(0, size.along - box.along.to);
  return {
    fromEnd: atMost(before, after) ? before : after,
    along: long(box.along),
    depth,
    left: (intoFace ? size.through : size.across) - depth,
    into: intoFace ? 'face' : allThrough ? 'edge' : 'corner',
  };
}

function long(span: Span): Mm {
  return span.to - span.from;
}
