import type { Box } from '../../model/part.js';
import type { PaperPoint } from '../strokes.js';
import type { Convex } from './convex.js';
import { type Eye, onPaper } from './corner-sight.js';

/** The outline of a box on the paper: six corners, or four of a flat one, round to the left. */
export function outlineOf({ min, max }: Box, eye: Eye): Convex {
  // Along x and y from the far side of the box to the near one.
  const [farX, nearX] = eye.x > 0 ? [min.x, max.x] : [max.x, min.x];
  const [farY, nearY] = eye.y > 0 ? [min.y, max.y] : [max.y, min.y];
  const round = [
    onPaper({ x: nearX, y: nearY, z: min.z }, eye),
    onPaper({ x: farX, y: nearY, z: min.z }, eye),
    onPaper({ x: farX, y: nearY, z: max.z }, eye),
    onPaper({ x: farX, y: farY, z: max.z }, eye),
    onPaper({ x: nearX, y: farY, z: max.z }, eye),
    onPaper({ x: nearX, y: farY, z: min.z }, eye),
  ];
  const corners = round.filter((at, i) => !isSame(at, round[(i + 1) % round.length] ?? at));
  return eye.x === eye.y ? corners : corners.reverse();
}

function isSame(a: PaperPoint, b: PaperPoint): boolean {
  return a.u === b.u && a.v === b.v;
}
