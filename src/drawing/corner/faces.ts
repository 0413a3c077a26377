import { lessThan } from '../../measure/tolerance.js';
import { withAxis } from '../../model/box.js';
import { AXES, type Axis, type Box } from '../../model/part.js';
import { type Convex, cutOut } from './convex.js';
import type { Eye } from './corner-sight.js';
import { outlineOf } from './outline.js';
import { overlap, seenBox, type Wood } from './seen-box.js';

/** What is seen of the faces of a box that look to the eye, as shapes that do not overlap. */
export function facesInSight(box: Box, all: readonly Wood[], eye: Eye): readonly Convex[] {
  return AXES.flatMap(axis => {
    const plane = eye[axis] > 0 ? box.max[axis] : box.min[axis];
    const flat: Box = {
      min: withAxis(box.min, axis, plane),
      max: withAxis(box.max, axis, plane),
    };
    const on = seenBox(flat, eye);
    let open: readonly Convex[] = [outlineOf(flat, eye)];
    for (const other of all) {
      if (open.length === 0) break;
      if (other.box === box) continue;
      const before = inFrontOf(other.box, { axis, plane }, eye);
      if (before === undefined || !overlap(on, other)) continue;
      const shade = before === other.box ? other.outline : outlineOf(before, eye);
      const [only] = open;
      open =
        only !== undefined && open.length === 1
          ? cutOut(only, shade)
          : open.flatMap(shape => cutOut(shape, shade));
    }
    return open;
  });
}

/** What a box has between a plane and the eye; undefined for nothing. */
function inFrontOf(
  box: Box,
  { axis, plane }: { readonly axis: Axis; readonly plane: number },
  eye: Eye,
): Box | undefined {
  if (eye[axis] > 0) {
    if (!lessThan(plane, box.max[axis])) return undefined;
    if (plane <= box.min[axis]) return box;
    return { min: withAxis(box.min, axis, plane), max: box.max };
  }
  if (!lessThan(box.min[axis], plane)) return undefined;
  if (box.max[axis] <= plane) return box;
  return { min: box.min, max: withAxis(box.max, axis, plane) };
}
