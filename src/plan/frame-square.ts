import {
  diagonalOf,
  diagonalTolerance,
  doesNotClose,
  type MeasuredFrame,
  outOfSquare,
} from '../materials/square.js';
import { formatLength } from '../measure/format-length.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost, lessThan } from '../measure/tolerance.js';
import { finer } from './readings.js';

export type FrameVerdict = {
  readonly isSquare: boolean;
  readonly verdict: string;
  readonly lines: readonly string[];
};

/** Two sides and both diagonals: near enough, or which way to push and how far. */
export function frameVerdict(frame: MeasuredFrame, display: Display): FrameVerdict {
  const allowed = diagonalTolerance(Math.max(frame.length, frame.width));
  const { difference, push, aim } = outOfSquare(frame);
  const say = (mm: Mm) => formatLength(mm, finer(display));
  const gap = doesNotClose(frame);
  if (!atMost(gap, 2 * allowed)) {
    return {
      isSquare: false,
      verdict: 'Measure again before you push.',
      lines: [
        `Sides of ${say(frame.length)} and ${say(frame.width)} have diagonals of about ${say(diagonalOf(frame.length, frame.width))}: these are off by ${say(gap)}.`,
        'A diagonal was read wrong, or a side is not what the plan says: measure all four sides.',
      ],
    };
  }
  const apart = `The diagonals are ${say(difference)} apart; up to ${say(allowed)} is good here.`;
  if (atMost(difference, allowed)) {
    return { isSquare: true, verdict: 'Square enough: leave it.', lines: [apart] };
  }
  const [longer, shorter] = lessThan(frame.other, frame.one)
    ? ['first', 'second']
    : ['second', 'first'];
  return {
    isSquare: false,
    verdict: `Push it ${say(push)}.`,
    lines: [
      apart,
      `Hold one ${say(frame.length)} side and push the other along itself by ${say(push)}, so that the ${longer} diagonal gets shorter.`,
      `Aim: both diagonals ${say(aim)}. The ${longer} loses ${say(difference / 2)}, the ${shorter} gains as much.`,
      `A clamp or strap across the ${longer} diagonal pulls it in. Pull a little past it, let go, measure again.`,
      'Check that nothing is twisted before it is fixed: look over two straight sticks.',
    ],
  };
}

/** Can a diagonal of such sides be this long at all? */
export function isDiagonal(
  length: Mm,
  { long, wide }: { readonly long: Mm; readonly wide: Mm },
): boolean {
  return lessThan(length, long + wide) && lessThan(long - wide, length);
}
