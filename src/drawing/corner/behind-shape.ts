import type { PaperPoint, Patch, Stroke } from '../strokes.js';
import { type Convex, cutOut, turn } from './convex.js';

/** What is drawn of wood. */
export type Seen = { readonly strokes: readonly Stroke[]; readonly patches: readonly Patch[] };

/** What is seen of strokes and patches beside a shape that stands before all of them. */
export function besideShape({ strokes, patches }: Seen, shape: Convex): Seen {
  return {
    strokes: strokes.flatMap(stroke => strokeBeside(stroke, shape)),
    patches: patches.flatMap(patch =>
      cutOut(patch.corners, shape).map((corners): Patch => ({ ...patch, corners })),
    ),
  };
}

/** A stroke less what lies in the shape: as it is, an end, both ends, or nothing. */
function strokeBeside(stroke: Stroke, shape: Convex): readonly Stroke[] {
  const { from, to } = stroke;
  let [enters, leaves] = [0, 1];
  for (const [i, a] of shape.entries()) {
    const b = shape[(i + 1) % shape.length] ?? a;
    const [atFrom, atTo] = [turn(a, b, from), turn(a, b, to)];
    if (atFrom <= 0 && atTo <= 0) return [stroke];
    const share = atFrom / (atFrom - atTo);
    if (atFrom < 0) enters = Math.max(enters, share);
    else if (atTo < 0) leaves = Math.min(leaves, share);
  }
  if (enters >= leaves) return [stroke];
  const at = (share: number): PaperPoint => ({
    u: from.u + share * (to.u - from.u),
    v: from.v + share * (to.v - from.v),
  });
  return [
    ...(enters > 0 ? [{ ...stroke, to: at(enters) }] : []),
    ...(leaves < 1 ? [{ ...stroke, from: at(leaves) }] : []),
  ];
}
