import { lessThan } from '../../measure/tolerance.js';
import { AXES, type Axis, type Box, type Point } from '../../model/part.js';
import { type Convex, cutOut, hull } from './convex.js';
import { type Eye, onPaper } from './corner-sight.js';
import { overlap, type Seen, seenBox } from './seen-box.js';

/** What is seen of the faces of a box that look to the eye, as shapes that do not overlap. */
export function facesInSight(box: Box, all: readonly Seen[], eye: Eye): readonly Convex[] {
  return AXES.flatMap(axis => {
    const plane = eye[axis] > 0 ? box.max[axis] : box.min[axis];
    const flat: Box = { min: { ...box.min, [axis]: plane }, max: { ...box.max, [axis]: plane } };
    const on = seenBox(flat, eye);
    let open: readonly Convex[] = [outlineOf(flat, eye)];
    for (const other of all) {
      if (open.length === 0) break;
      if (other.box === box || !overlap(on, other)) continue;
      const before = inFrontOf(other.box, { axis, plane }, eye);
      if (before === undefined) continue;
      const shade = outlineOf(before, eye);
      open = open.flatMap(shape => cutOut(shape, shade));
    }
    return open;
  });
}

/** The outline of a box on the paper: six corners, or four of a flat one. */
export function outlineOf({ min, max }: Box, eye: Eye) {
  const corners: readonly Point[] = [min.x, max.x].flatMap(x =>
    [min.y, max.y].flatMap(y => [min.z, max.z].map(z => ({ x, y, z }))),
  );
  return hull(corners.map(corner => onPaper(corner, eye)));
}

/** What a box has between a plane and the eye; undefined for nothing. */
function inFrontOf(
  box: Box,
  { axis, plane }: { readonly axis: Axis; readonly plane: number },
  eye: Eye,
): Box | undefined {
  if (eye[axis] > 0) {
    if (!lessThan(plane, box.max[axis])) return undefined;
    return { min: { ...box.min, [axis]: Math.max(plane, box.min[axis]) }, max: box.max };
  }
  if (!lessThan(box.min[axis], plane)) return undefined;
  return { min: box.min, max: { ...box.max, [axis]: Math.min(plane, box.max[axis]) } };
}
