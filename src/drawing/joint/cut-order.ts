import { formatLengthExact } from '../../measure/format-length.js';
import type { Display } from '../../measure/quantities.js';
import { sameLength } from '../../measure/tolerance.js';
import type { BoardBox, BoardSize } from '../../model/frame-of-board.js';

/** What is done at a notch: before sawing, cut by cut, and when the waste is out. */
export type CutOrder = {
  readonly before: string;
  readonly cuts: readonly [string, string];
  readonly after: string;
};

/**
 * The order of cuts, common practice: mark from the board itself, across the grain first so that no
 * chip runs past the shoulder, always on the waste side, then along the grain, then clean up and try.
 */
export function cutOrder(box: BoardBox, size: BoardSize, display: Display): CutOrder {
  const atEnd = sameLength(box.along.from, 0) || sameLength(box.along.to, size.along);
  const isThrough = sameLength(box.through.to - box.through.from, size.through);
  const length = (value: number) => formatLengthExact(value, display);
  const along = length(box.along.to - box.along.from);
  const deep = isThrough ? box.across.to - box.across.from : box.through.to - box.through.from;
  const shoulders = atEnd
    ? `Saw the shoulder, ${along} from the end, ${length(deep)} deep, on the waste side of the line.`
    : `Saw both shoulders, ${along} apart, ${length(deep)} deep, on the waste side of the lines.`;
  const bottom = atEnd
    ? 'Saw in from the end along the bottom line until the waste falls off.'
    : 'Saw a few times between the shoulders, knock the waste out, pare down to the bottom line.';
  return {
    before:
      'Hold the board that lies in it to the place and mark from it; carry the lines round. Hatch the waste.',
    cuts: [shoulders, bottom],
    after: 'Pare the bottom flat and try the board: it goes in by hand and stays.',
  };
}
