import { boxRound } from '../sight.js';
import type { Mark, PaperPoint, Patch } from '../strokes.js';
import { areaOf, middleOf } from './convex.js';

/** Names of boards that are only dashed, each once, beside the wood with a leader to its middle. */
export function marksOfDashed(
  dashed: readonly { readonly part: string; readonly middle: PaperPoint }[],
  names: ReadonlyMap<string, string>,
): readonly Mark[] {
  const first = new Map<string, Mark>();
  for (const { part, middle } of dashed) {
    const text = names.get(part);
    if (text === undefined || first.has(text)) continue;
    first.set(text, { text, part, on: middle, room: { width: 0, height: 0 }, bright: true });
  }
  return [...first.values()];
}

/** Share of the rectangle round a slanted face that lies safely on it. */
const ON_FACE = 1 / 2;

/** Each name once, on the largest face that is seen of the boards that have it. */
export function marksOn(
  patches: readonly Patch[],
  names: ReadonlyMap<string, string>,
): readonly Mark[] {
  const largest = new Map<string, Patch>();
  for (const patch of patches) {
    const name = names.get(patch.part);
    if (name === undefined) continue;
    const before = largest.get(name);
    if (before === undefined || areaOf(before.corners) < areaOf(patch.corners)) {
      largest.set(name, patch);
    }
  }
  return [...largest].map(([text, { part, corners }]) => {
    const { u, v } = boxRound(corners);
    return {
      text,
      part,
      on: middleOf(corners),
      room: { width: (u.to - u.from) * ON_FACE, height: (v.to - v.from) * ON_FACE },
      bright: true,
    };
  });
}
