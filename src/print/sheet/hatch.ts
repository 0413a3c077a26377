import type { Mm } from '../../measure/quantities.js';
import { line, type Mark } from './mark.js';

const APART: Mm = 1.8;
const THIN: Mm = 0.12;

/** A rectangle filled with thin lines at 45 degrees, so that it reads without any gray. */
export function hatched(
  { width, height }: { readonly width: Mm; readonly height: Mm },
  ways: 'one way' | 'both ways',
): readonly Mark[] {
  const rising = risingLines(width, height);
  if (ways === 'one way') return rising;
  const falling = rising.map(mark => ({
    ...mark,
    from: { x: mark.from.x, y: height - mark.from.y },
    to: { x: mark.to.x, y: height - mark.to.y },
  }));
  return [...rising, ...falling];
}

function risingLines(width: Mm, height: Mm) {
  const step = APART * Math.SQRT2;
  const count = Math.floor((width + height) / step);
  return Array.from({ length: count }, (_, at) => {
    const sum = (at + 1) * step - step / 2;
    const from = { x: Math.max(0, sum - height), y: Math.min(height, sum) };
    const to = { x: Math.min(width, sum), y: Math.max(0, sum - width) };
    return line(from, to, THIN) satisfies Mark;
  });
}
