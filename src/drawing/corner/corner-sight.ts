import type { Point } from '../../model/part.js';
import type { CornerView, PaperPoint } from '../strokes.js';

/** Where the eye is, seen from the piece: to its right or left, behind or before it, always above. */
export type Eye = { readonly x: 1 | -1; readonly y: 1 | -1; readonly z: 1 };

/** One stands at a corner of the piece and looks down at it. */
export type CornerSight = { readonly title: string; readonly eye: Eye };

/**
 * Isometric views: the eye is as far to the side as it is before the piece and above it, so that all
 * three directions shrink alike, and lengths along them are drawn true (ISO 5456-3 and ASME Y14.4 call
 * it an isometric drawing; not re-checked).
 */
export const CORNER_SIGHTS: Readonly<Record<CornerView, CornerSight>> = {
  'corner-right': { title: 'From the front right corner', eye: { x: 1, y: -1, z: 1 } },
  'corner-back-right': { title: 'From the back right corner', eye: { x: 1, y: 1, z: 1 } },
  'corner-back-left': { title: 'From the back left corner', eye: { x: -1, y: 1, z: 1 } },
  'corner-left': { title: 'From the front left corner', eye: { x: -1, y: -1, z: 1 } },
};

/** Level lines of the piece rise by 30 degrees on the paper. */
const ACROSS = Math.sqrt(3) / 2;
const RISE = 1 / 2;

/** Where a point of the piece lies on the paper. */
export function onPaper({ x, y, z }: Point, eye: Eye): PaperPoint {
  return { u: (eye.x * y - eye.y * x) * ACROSS, v: z - (eye.x * x + eye.y * y) * RISE };
}
