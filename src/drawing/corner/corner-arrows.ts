import type { Box, Point } from '../../model/part.js';
import { type Arrow, WALL } from '../strokes.js';
import { type Eye, onPaper } from './corner-sight.js';

/** The way of a board from where it is drawn to its place. */
export type Way = { readonly from: Point; readonly to: Point };

export function arrowOf({ from, to }: Way, eye: Eye): Arrow {
  return { from: onPaper(from, eye), to: onPaper(to, eye), kind: 'goes', text: '' };
}

/** Share of the depth of the piece that the arrow is long, and how far behind the piece it begins. */
const ARROW = 1 / 3;
const AIR = 1 / 8;

/** From behind the end of the piece that is nearer to the eye, on the ground. */
export function towardWall({ min, max }: Box, eye: Eye): Arrow {
  const depth = max.y - min.y;
  const at = (y: number) => onPaper({ x: eye.x > 0 ? max.x : min.x, y, z: min.z }, eye);
  const start = max.y + depth * AIR;
  return { from: at(start), to: at(start + depth * ARROW), kind: 'toward', text: WALL };
}
