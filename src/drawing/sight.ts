import type { Mm } from '../measure/quantities.js';
import type { Axis, Box } from '../model/part.js';
import type { PaperPoint, SquareView } from './strokes.js';

export type Span = { readonly from: Mm; readonly to: Mm };
/** A rectangle on the paper: u to the right, v up. */
export type PaperBox = { readonly u: Span; readonly v: Span };

/** Where one stands to see a view, and how its two directions are called in words. */
export type Sight = {
  readonly title: string;
  readonly u: Axis;
  readonly v: Axis;
  /** The axis one looks along, and whether depth grows with it. */
  readonly depth: Axis;
  readonly grows: boolean;
  /** Sizes along u and v: "48 in wide and 18 in high". */
  readonly size: { readonly u: string; readonly v: string };
  /** What distances along u and v are measured from. */
  readonly datum: { readonly u: string; readonly v: string };
};

/**
 * Third-angle views, the habit of American drawings: each view lies on the side that it is seen from.
 * The end view is seen from the right and would lie right of the front view, so its left edge is the
 * front; the view from above would lie over the front view, so its lower edge is the front.
 */
export const SIGHTS: Readonly<Record<SquareView, Sight>> = {
  front: {
    title: 'Front view',
    u: 'x',
    v: 'z',
    depth: 'y',
    grows: true,
    size: { u: 'wide', v: 'high' },
    datum: { u: 'the left', v: 'the bottom' },
  },
  end: {
    title: 'End view from the right, front at the left',
    u: 'y',
    v: 'z',
    depth: 'x',
    grows: false,
    size: { u: 'deep', v: 'high' },
    datum: { u: 'the front', v: 'the bottom' },
  },
  above: {
    title: 'View from above, front at the bottom',
    u: 'x',
    v: 'y',
    depth: 'z',
    grows: false,
    size: { u: 'wide', v: 'deep' },
    datum: { u: 'the left', v: 'the front' },
  },
};

/** A box as it lies on the paper of a view, in mm of the piece: not yet moved to the paper's corner. */
export function paperBox(box: Box, sight: Sight): PaperBox {
  return {
    u: { from: box.min[sight.u], to: box.max[sight.u] },
    v: { from: box.min[sight.v], to: box.max[sight.v] },
  };
}

/** How far the near side of a box is from the eye, up to a constant: the smaller, the nearer. */
export function nearDepth(box: Box, sight: Sight): Mm {
  return sight.grows ? box.min[sight.depth] : -box.max[sight.depth];
}

/** The corners of a rectangle, from its lower left one round to the right. */
export function cornersOf({ u, v }: PaperBox): readonly [PaperPoint, ...PaperPoint[]] {
  return [
    { u: u.from, v: v.from },
    { u: u.to, v: v.from },
    { u: u.to, v: v.to },
    { u: u.from, v: v.to },
  ];
}

/** The smallest rectangle around some points. */
export function boxRound(points: readonly PaperPoint[]): PaperBox {
  const us = points.map(({ u }) => u);
  const vs = points.map(({ v }) => v);
  return {
    u: { from: Math.min(...us), to: Math.max(...us) },
    v: { from: Math.min(...vs), to: Math.max(...vs) },
  };
}

/** The smallest rectangle around several; undefined around none. */
export function boundsOf(boxes: readonly PaperBox[]): PaperBox | undefined {
  const [first, ...rest] = boxes;
  if (first === undefined) return undefined;
  return rest.reduce((all, box) => ({ u: around(all.u, box.u), v: around(all.v, box.v) }), first);
}

function around(a: Span, b: Span): Span {
  return { from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) };
}

/** The rectangle moved so that `corner` becomes the origin. */
export function movedTo(box: PaperBox, corner: PaperBox): PaperBox {
  return {
    u: { from: box.u.from - corner.u.from, to: box.u.to - corner.u.from },
    v: { from: box.v.from - corner.v.from, to: box.v.to - corner.v.from },
  };
}
