import type { PaperPoint } from '../strokes.js';

/** A shape without dents, its corners round to the left. */
export type Convex = readonly PaperPoint[];

/** What is smaller than this, in square mm, is a hair left over by arithmetic and no face. */
const NOTHING = 1e-3;

/** Twice the area left of the way from a over b to c; negative where it turns to the right. */
export function turn(a: PaperPoint, b: PaperPoint, c: PaperPoint): number {
  return (b.u - a.u) * (c.v - a.v) - (b.v - a.v) * (c.u - a.u);
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
  const lies = lieOf(shape, hole);
  if (lies === 'beside') return [shape];
  if (lies === 'inside') return [];
  const left: Convex[] = [];
  let rest = shape;
  for (const [i, a] of hole.entries()) {
    const b = hole[(i + 1) % hole.length] ?? a;
    const outside = clip(rest, { a: b, b: a });
    if (areaOf(outside) > NOTHING) left.push(outside);
    rest = clip(rest, { a, b });
    // Nothing lies in the hole: the shape stays whole.
    if (areaOf(rest) <= NOTHING) return [shape];
  }
  return left;
}

/** Most pairs of shapes need no cut: one lies beyond an edge of the other, or wholly in it. */
function lieOf(shape: Convex, hole: Convex): 'beside' | 'inside' | 'across' {
  let inside = true;
  let a = hole.at(-1);
  for (const b of hole) {
    let beyond = true;
    for (const point of shape) {
      const side = a === undefined ? 0 : exact(turn(a, b, point));
      if (side > 0) beyond = false;
      if (side < 0) inside = false;
    }
    if (beyond) return 'beside';
    a = b;
  }
  return inside ? 'inside' : 'across';
}

/** A corner that lies on a line, give or take what arithmetic loses, lies on it. */
function exact(side: number): number {
  return Math.abs(side) < NOTHING / 1000 ? 0 : side;
}

/** The part of a shape that does not lie to the right of the way from a to b. */
function clip(shape: Convex, { a, b }: { readonly a: PaperPoint; readonly b: PaperPoint }): Convex {
  const kept: PaperPoint[] = [];
  let from = shape.at(-1);
  let atFrom = from === undefined ? 0 : exact(turn(a, b, from));
  for (const to of shape) {
    const atTo = exact(turn(a, b, to));
    if (from !== undefined && atFrom * atTo < 0) {
      const share = atFrom / (atFrom - atTo);
      kept.push({ u: from.u + share * (to.u - from.u), v: from.v + share * (to.v - from.v) });
    }
    if (atTo >= 0) kept.push(to);
    from = to;
    atFrom = atTo;
  }
  return kept;
}
