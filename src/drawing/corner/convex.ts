import type { PaperPoint } from '../strokes.js';

/** A shape without dents, its corners round to the left. */
export type Convex = readonly PaperPoint[];

/** What is smaller than this, in square mm, is a hair left over by arithmetic and no face. */
const NOTHING = 1e-3;

/** Twice the area left of the way from a over b to c; negative where it turns to the right. */
function turn(a: PaperPoint, b: PaperPoint, c: PaperPoint): number {
  return (b.u - a.u) * (c.v - a.v) - (b.v - a.v) * (c.u - a.u);
}

/** The smallest shape without dents round some points (Andrew's monotone chain). */
export function hull(points: readonly PaperPoint[]): Convex {
  const sorted = [...points].sort((a, b) => a.u - b.u || a.v - b.v);
  return [...chain(sorted), ...chain(sorted.reverse())];
}

function chain(points: readonly PaperPoint[]): PaperPoint[] {
  const found: PaperPoint[] = [];
  for (const point of points) {
    while (found.length > 1) {
      const [a, b] = found.slice(-2);
      if (a !== undefined && b !== undefined && turn(a, b, point) > 0) break;
      found.pop();
    }
    found.push(point);
  }
  return found.slice(0, -1);
}

/** Area of a shape in square mm. */
export function areaOf(shape: Convex): number {
  const [first] = shape;
  if (first === undefined) return 0;
  return shape.reduce((sum, a, i) => sum + turn(first, a, shape[i + 1] ?? first), 0) / 2;
}

/** The middle of a shape. */
export function middleOf(shape: Convex): PaperPoint {
  const sum = shape.reduce((all, { u, v }) => ({ u: all.u + u, v: all.v + v }), { u: 0, v: 0 });
  return { u: sum.u / shape.length, v: sum.v / shape.length };
}

/** What is left of a shape when another is taken out of it, as shapes that do not overlap. */
export function cutOut(shape: Convex, hole: Convex): readonly Convex[] {
  const left: Convex[] = [];
  let rest = shape;
  for (const [i, a] of hole.entries()) {
    const b = hole[(i + 1) % hole.length] ?? a;
    const outside = clip(rest, point => -turn(a, b, point));
    if (areaOf(outside) > NOTHING) left.push(outside);
    rest = clip(rest, point => turn(a, b, point));
    // Nothing lies in the hole: the shape stays whole.
    if (areaOf(rest) <= NOTHING) return [shape];
  }
  return left;
}

/** A corner that lies on a line, give or take what arithmetic loses, lies on it. */
function exact(side: number): number {
  return Math.abs(side) < NOTHING / 1000 ? 0 : side;
}

/** The part of a shape on the side of a line where `side` is not negative. */
function clip(shape: Convex, side: (point: PaperPoint) => number): Convex {
  return shape.flatMap((a, i) => {
    const b = shape[(i + 1) % shape.length] ?? a;
    const [atA, atB] = [exact(side(a)), exact(side(b))];
    const kept = atA >= 0 ? [a] : [];
    if (atA * atB >= 0) return kept;
    const share = atA / (atA - atB);
    return [...kept, { u: a.u + share * (b.u - a.u), v: a.v + share * (b.v - a.v) }];
  });
}
