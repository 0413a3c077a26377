import { lessThan } from '../../measure/tolerance.js';
import { bounds, withAxis } from '../../model/box.js';
import { AXES, type Box, type Point } from '../../model/part.js';
import { type Eye, onPaper } from './corner-sight.js';
import { spansInSight } from './in-sight.js';
import { type Along, joinLines } from './join-lines.js';
import { overlap, seenBox, type Wood, woodOf } from './seen-box.js';
import { type Edge, solidEdges } from './solid-edges.js';

/** All wood that may hide something, and from where it is seen. */
export type Scene = { readonly seen: readonly Wood[]; readonly eye: Eye };

/** Large boxes first, since they hide most: the sooner nothing is left, the less there is to cut. */
export function sceneOf(solids: readonly Box[], eye: Eye): Scene {
  const seen = solids.map(box => woodOf(box, eye));
  return { seen: seen.toSorted((a, b) => b.area - a.area), eye };
}

/** What may hide something of a board, the board itself first since it hides its own back. */
export function nearTo(solid: readonly Box[], { seen, eye }: Scene): readonly Wood[] {
  const whole = bounds(solid);
  if (whole === undefined) return [];
  const on = seenBox(whole, eye);
  const own = new Set(solid);
  const near = seen.filter(one => overlap(on, one) && isBefore(one.box, whole, eye));
  return [...near.filter(({ box }) => own.has(box)), ...near.filter(({ box }) => !own.has(box))];
}

/** True unless all of a box lies farther from the eye than another, along one of the axes. */
function isBefore(box: Box, other: Box, eye: Eye): boolean {
  return AXES.every(axis =>
    eye[axis] > 0
      ? lessThan(other.min[axis], box.max[axis])
      : lessThan(box.min[axis], other.max[axis]),
  );
}

/** The stretches of a board's edges that are seen. */
export function edgesOf(
  solid: readonly Box[],
  bright: boolean,
  { near, eye }: { readonly near: readonly Wood[]; readonly eye: Eye },
): readonly Along[] {
  const boxes = near.map(({ box }) => box);
  return solidEdges(solid).flatMap(edge =>
    spansInSight(edge, boxes, eye).map(({ from, to }) => ({
      axis: edge.axis,
      stroke: {
        from: onPaper(alongBy(edge, from), eye),
        to: onPaper(alongBy(edge, to), eye),
        kind: 'visible' as const,
        bright,
      },
    })),
  );
}

function alongBy({ from, axis }: Edge, by: number): Point {
  return withAxis(from, axis, from[axis] + by);
}

/** A board as it would be seen alone, dashed. */
export function hiddenOutline(solid: readonly Box[], eye: Eye) {
  const near = nearTo(solid, sceneOf(solid, eye));
  const alone = edgesOf(solid, true, { near, eye });
  return joinLines(alone).map(stroke => ({ ...stroke, kind: 'hidden' as const }));
}
