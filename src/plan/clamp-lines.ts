import { lessThan } from '../measure/tolerance.js';
import { otherAxes } from '../model/box.js';
import type { Joint } from '../model/part.js';

/**
 * Bar clamps that hold screwed joints closed until their screws are in: joints that are pressed along
 * one line share one, so the four corners of a panel take two. Common practice.
 */
export function clampLines(joints: readonly Joint[]): number {
  const lines: Joint[] = [];
  for (const joint of joints) {
    if (joint.with === 'screw' && !lines.some(line => inOneLine(line, joint))) lines.push(joint);
  }
  return lines.length;
}

/** Pressed along the same axis, one over the other. */
function inOneLine(a: Joint, b: Joint): boolean {
  const { axis } = a.drive;
  if (axis !== b.drive.axis) return false;
  return otherAxes(axis).every(
    it => lessThan(a.patch.min[it], b.patch.max[it]) && lessThan(b.patch.min[it], a.patch.max[it]),
  );
}
